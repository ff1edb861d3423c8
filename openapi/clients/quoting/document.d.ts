/** The types of the interface; `emit-types.ts` writes them from openapi/openapi.json. */
export interface paths {
    "/v1/site": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getSite"];
        put: operations["replaceSite"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listPumps"];
        put?: never;
        post: operations["createPump"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/{pumpId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getPump"];
        put: operations["replacePump"];
        post?: never;
        delete: operations["deletePump"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/import": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["importPumps"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/{pumpId}/head-points": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put: operations["replaceHeadPoints"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/{pumpId}/power-points": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put: operations["replacePowerPoints"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/{pumpId}/curves": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getPumpCurves"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listLoops"];
        put?: never;
        post: operations["createLoop"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getLoop"];
        put: operations["replaceLoop"];
        post?: never;
        delete: operations["deleteLoop"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/system-curve": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getSystemCurve"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/duty-point": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getDutyPoint"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tariffs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listTariffs"];
        put?: never;
        post: operations["createTariff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/tariffs/{tariffId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getTariff"];
        put: operations["replaceTariff"];
        post?: never;
        delete: operations["deleteTariff"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/schedule": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getSchedule"];
        put: operations["replaceSchedule"];
        post?: never;
        delete: operations["deleteSchedule"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/setpoint": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getSetpoint"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/setpoints": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listSetpoints"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/pumps/{pumpId}/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getPumpChart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getLoopChart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/schedule/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getScheduleChart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/condition/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getConditionChart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/comparisons/{comparisonId}/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getComparisonChart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/comparisons/{comparisonId}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getComparisonReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getLoopReport"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listReadings"];
        put?: never;
        post: operations["addReadings"];
        delete: operations["deleteReadings"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/condition": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getCondition"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/baseline": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["createBaseline"];
        delete: operations["deleteBaseline"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/calibration": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listCalibrations"];
        put?: never;
        post: operations["computeCalibration"];
        delete: operations["deleteCalibration"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/recommendations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeRecommendation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/recommendation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getRecommendation"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeDesign"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/chart.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeDesignChart"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/designs/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeDesignReport"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/screen-sizes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeScreenSize"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/leak-exposures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeLeakExposure"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/comparisons": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listComparisons"];
        put?: never;
        post: operations["createComparison"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/comparisons/{comparisonId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getComparison"];
        put?: never;
        post?: never;
        delete: operations["deleteComparison"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/bills-of-materials": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeBillOfMaterials"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/spares": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["computeSpares"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/upgrade-plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listUpgradePlans"];
        put?: never;
        post: operations["createUpgradePlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/upgrade-plans/{upgradePlanId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getUpgradePlan"];
        put?: never;
        post?: never;
        delete: operations["deleteUpgradePlan"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/summary": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getSummary"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listMaintenanceTasks"];
        put?: never;
        post: operations["createMaintenanceTask"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks/{maintenanceTaskId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getMaintenanceTask"];
        put: operations["replaceMaintenanceTask"];
        post?: never;
        delete: operations["deleteMaintenanceTask"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks/{maintenanceTaskId}/completions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listCompletions"];
        put?: never;
        post: operations["createCompletion"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks/{maintenanceTaskId}/completions/{completionId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getCompletion"];
        put?: never;
        post?: never;
        delete: operations["deleteCompletion"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/loops/{loopId}/starter-tasks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["createStarterTasks"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks.ics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getMaintenanceCalendar"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/pipes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listPipes"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/fittings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listFittings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/water": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getWaterProperties"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/reference/cautions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listCautions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["exportSite"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/import": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post: operations["importSite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/healthz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getHealth"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/readyz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getReadiness"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getOpenApiDocument"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
type webhooks = Record<string, never>;
export interface components {
    schemas: {
        Problem: {
            type: string;
            code: "body-too-large" | "calibration-refused" | "cut-short" | "headers-too-large" | "in-use" | "internal-error" | "invalid-request" | "key-taken" | "limit-exceeded" | "loopback-only" | "malformed-csv" | "malformed-json" | "malformed-request" | "malformed-url" | "malformed-utf8" | "method-not-allowed" | "missing-body" | "no-installed-pump" | "no-requirement" | "no-value" | "not-acceptable" | "not-empty" | "not-found" | "stale-version" | "storage-full" | "too-slow" | "unavailable" | "unsolved" | "unsupported-media-type" | "url-too-long" | "version-required";
            title: string;
            status: number;
            detail: string;
            instance: string;
            requestId: string;
            errors?: components["schemas"]["ProblemError"][];
            limit?: number;
            actual?: number;
            usedBy?: components["schemas"]["UsedBy"][];
        };
        ProblemError: {
            pointer?: string;
            parameter?: string;
            header?: string;
            detail: string;
            line?: number;
            limit?: number;
            actual?: number;
        };
        UsedBy: {
            kind: string;
            id: string;
            key?: string;
            name: string;
        };
        Site: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            timeZone: string;
            currency: string;
            elevation: number;
            price: number | null;
            tariff: string | null;
            labourRate: number | null;
            units?: {
                [key: string]: string;
            };
        };
        SiteRequest: {
            name: string;
            timeZone: string;
            currency: string;
            elevation?: number | string;
            price?: number | null;
            tariff?: string | null;
            labourRate?: number | null;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        Pump: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            ratedSpeed?: number;
            headPoints: components["schemas"]["HeadPoint"][];
            powerPoints: components["schemas"]["PowerPoint"][];
            settings: components["schemas"]["Settings"];
            speedMap?: components["schemas"]["SpeedPoint"][];
            npshPoints?: components["schemas"]["NpshPoint"][];
            standbyPower: number;
            ratedPower?: number;
            flowLimits?: components["schemas"]["FlowLimits"];
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            mounting?: "dry" | "submerged";
            motorEfficiency?: number;
            price?: number;
            expectedLifeYears?: number;
            failures?: components["schemas"]["Failures"];
            service?: components["schemas"]["Service"];
            cautions?: components["schemas"]["Caution"][];
            units?: {
                [key: string]: string;
            };
        };
        HeadPoint: {
            flow: number;
            head: number;
            setting: number;
        };
        PowerPoint: {
            setting: number;
            power: number;
            flow?: number;
        };
        Settings: {
            min: number;
            max: number;
            step: number;
        };
        SpeedPoint: {
            setting: number;
            speed: number;
        };
        NpshPoint: {
            flow: number;
            head: number;
        };
        FlowLimits: {
            min?: number;
            max?: number;
        };
        Failures: {
            count: number;
            devices: number;
            years: number;
        };
        Service: {
            everyMonths: number;
            minutes: number;
            parts: number;
        };
        Caution: {
            code: string;
            severity: "note" | "warning" | "danger";
            detail: string;
            source: string;
            pointer?: string;
            value?: number;
            limit?: number;
            quantity?: "flow" | "head" | "elevation" | "distance" | "depth" | "slot" | "velocity" | "pressure" | "volume" | "power" | "setting" | "speed";
        };
        PumpRequest: {
            name: string;
            ratedSpeed?: number;
            headPoints: components["schemas"]["HeadPointRequest"][];
            powerPoints: components["schemas"]["PowerPointRequest"][];
            settings?: components["schemas"]["SettingsRequest"];
            speedMap?: components["schemas"]["SpeedPointRequest"][];
            npshPoints?: components["schemas"]["NpshPointRequest"][];
            standbyPower?: number | string;
            ratedPower?: number | string;
            flowLimits?: components["schemas"]["FlowLimitsRequest"];
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            mounting?: "dry" | "submerged";
            motorEfficiency?: number;
            price?: number;
            expectedLifeYears?: number;
            failures?: components["schemas"]["Failures"];
            service?: components["schemas"]["Service"];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
        };
        HeadPointRequest: {
            flow: number | string;
            head: number | string;
            setting?: number | string;
        };
        PowerPointRequest: {
            setting: number | string;
            power: number | string;
            flow?: number | string;
        };
        SettingsRequest: {
            min?: number | string;
            max?: number | string;
            step?: number | string;
        };
        SpeedPointRequest: {
            setting: number | string;
            speed: number | string;
        };
        NpshPointRequest: {
            flow: number | string;
            head: number | string;
        };
        FlowLimitsRequest: {
            min?: number | string;
            max?: number | string;
        };
        PumpList: {
            items: components["schemas"]["Pump"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        Curves: {
            headFit: components["schemas"]["CurvesHeadFit"];
            powerFit: components["schemas"]["CurvesPowerFit"];
            bestEfficiencyPoint: components["schemas"]["CurvesBestEfficiencyPoint"] | null;
            table: components["schemas"]["CurvePoint"][];
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Basis: {
            modelVersion: string;
            loop: components["schemas"]["BasisLoop"] | null;
            pumps: components["schemas"]["BasisPump"][];
        };
        Loop: components["schemas"]["SystemCurveLoop"] | components["schemas"]["PipeworkLoop"];
        SystemCurveLoop: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            water: components["schemas"]["Water"];
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            siphonBreakDepth?: number;
            overflowCapacity?: number;
            gauges?: components["schemas"]["Gauges"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            systemCurve: components["schemas"]["SystemCurve"];
            outlets: components["schemas"]["ShareOutlet"][];
            cautions?: components["schemas"]["Caution"][];
            units?: {
                [key: string]: string;
            };
        };
        Water: {
            temperature: number;
            salinity: number;
        };
        Tank: {
            volume?: number;
            area?: number;
            width?: number;
            depth?: number;
        };
        Intake: {
            lossCoefficient: number;
            depth?: number;
            screen?: components["schemas"]["IntakeScreen"];
            smallestAnimal?: number;
            reachable?: boolean;
        };
        IntakeScreen: components["schemas"]["CylinderScreen"] | components["schemas"]["FlatScreen"] | components["schemas"]["BoxScreen"];
        CylinderScreen: {
            shape: "cylinder";
            diameter: number;
            length: number;
            openFraction: number;
            slot?: number;
            hole?: number;
            pitch?: number;
            pattern?: "square" | "staggered";
            count: number;
        };
        FlatScreen: {
            shape: "flat";
            width: number;
            length: number;
            openFraction: number;
            slot?: number;
            hole?: number;
            pitch?: number;
            pattern?: "square" | "staggered";
            count: number;
        };
        BoxScreen: {
            shape: "box";
            width: number;
            height: number;
            length: number;
            openFraction: number;
            slot?: number;
            hole?: number;
            pitch?: number;
            pattern?: "square" | "staggered";
            count: number;
        };
        Basin: {
            area: number;
            freeboard: number;
        };
        Gauges: {
            suctionDiameter: number;
            dischargeDiameter: number;
        };
        Meter: {
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            accuracy: number;
        };
        InstalledPump: {
            pump: string;
            count: number;
            setting: number;
            checkValves?: boolean;
            since?: string;
        };
        Limits: {
            throughSlotVelocity?: number | null;
            cloggedFraction?: number;
            screenBasis?: "mean" | "peak";
            pipeVelocity?: number;
            maximumEfficiency?: number;
            enforceNpsh?: boolean;
            allowExtrapolation?: boolean;
            allowReverseFlow?: boolean;
            gravity?: "report" | "reject";
        };
        SystemCurve: {
            staticHead?: number;
            points: components["schemas"]["SystemPoint"][];
        };
        SystemPoint: {
            flow: number;
            head: number;
        };
        ShareOutlet: {
            name: string;
            share: number;
            requiredFlow?: number;
            maximumFlow?: number;
        };
        PipeworkLoop: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            water: components["schemas"]["Water"];
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            siphonBreakDepth?: number;
            overflowCapacity?: number;
            gauges?: components["schemas"]["Gauges"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            staticHead: number;
            boreChanges?: "abrupt" | "ignored";
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
            cautions?: components["schemas"]["Caution"][];
            units?: {
                [key: string]: string;
            };
        };
        RunElement: components["schemas"]["Pipe"] | components["schemas"]["Fitting"] | components["schemas"]["Valve"] | components["schemas"]["LossByCoefficient"] | components["schemas"]["LossByLength"] | components["schemas"]["LossByPoint"];
        Pipe: {
            pipe: string | components["schemas"]["PipeBore"];
            length: number;
        };
        PipeBore: {
            insideDiameter: number;
            roughness?: number;
        };
        Fitting: {
            fitting: string;
            method?: "equivalent-diameters" | "two-k" | "three-k" | "fixed-k";
            count?: number;
            diameter?: number;
        };
        Valve: {
            valve: string | components["schemas"]["ValveByKv"] | components["schemas"]["ValveByCv"];
            method?: "equivalent-diameters" | "two-k" | "three-k" | "fixed-k";
            opening?: number;
            diameter?: number;
        };
        ValveByKv: {
            kv: number;
        };
        ValveByCv: {
            cv: number;
        };
        LossByCoefficient: {
            lossCoefficient: number;
            diameter?: number;
            boreChange?: boolean;
        };
        LossByLength: {
            equivalentLength: number;
            diameter?: number;
            roughness?: number;
        };
        LossByPoint: {
            loss: components["schemas"]["LossPoint"];
            boreChange?: boolean;
        };
        LossPoint: {
            head: number;
            flow: number;
        };
        Branch: {
            run: components["schemas"]["RunElement"][];
            outlet?: components["schemas"]["Outlet"];
            branches?: components["schemas"]["Branch"][];
            split?: "tee-90";
            highestElevation?: number;
        };
        Outlet: {
            name: string;
            requiredFlow?: number;
            maximumFlow?: number;
            reach?: components["schemas"]["Reach"];
            nozzleDiameter?: number;
            nozzleCount?: number;
            lossCoefficient?: number;
            staticHead?: number;
            exit?: "submerged" | "free";
        };
        Reach: {
            distance: number;
            velocity: number;
        };
        LoopRequest: components["schemas"]["SystemCurveLoopRequest"] | components["schemas"]["PipeworkLoopRequest"];
        SystemCurveLoopRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterRequest"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankRequest"];
            intake?: components["schemas"]["IntakeRequest"];
            basin?: components["schemas"]["BasinRequest"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesRequest"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpRequest"];
            limits?: components["schemas"]["LimitsRequest"];
            systemCurve: components["schemas"]["SystemCurveRequest"];
            outlets: components["schemas"]["ShareOutletRequest"][];
        };
        WaterRequest: {
            temperature?: number | string;
            salinity?: number | string;
        };
        TankRequest: {
            volume?: number | string;
            area?: number | string;
            width?: number | string;
            depth?: number | string;
        };
        IntakeRequest: {
            lossCoefficient?: number;
            depth?: number | string;
            screen?: components["schemas"]["IntakeScreenRequest"];
            smallestAnimal?: number | string;
            reachable?: boolean;
        };
        IntakeScreenRequest: components["schemas"]["CylinderScreenRequest"] | components["schemas"]["FlatScreenRequest"] | components["schemas"]["BoxScreenRequest"];
        CylinderScreenRequest: {
            shape: "cylinder";
            diameter: number | string;
            length: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            count?: number;
        };
        FlatScreenRequest: {
            shape: "flat";
            width: number | string;
            length: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            count?: number;
        };
        BoxScreenRequest: {
            shape: "box";
            width: number | string;
            height: number | string;
            length: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            count?: number;
        };
        BasinRequest: {
            area: number | string;
            freeboard: number | string;
        };
        GaugesRequest: {
            suctionDiameter: number | string;
            dischargeDiameter: number | string;
        };
        InstalledPumpRequest: {
            pump: string;
            count?: number;
            setting: number | string;
            checkValves?: boolean;
            since?: string;
        };
        LimitsRequest: {
            throughSlotVelocity?: (number | string) | null;
            cloggedFraction?: number;
            screenBasis?: "mean" | "peak";
            pipeVelocity?: number | string;
            maximumEfficiency?: number;
            enforceNpsh?: boolean;
            allowExtrapolation?: boolean;
            allowReverseFlow?: boolean;
            gravity?: "report" | "reject";
        };
        SystemCurveRequest: {
            staticHead?: number | string;
            points: components["schemas"]["SystemPointRequest"][];
        };
        SystemPointRequest: {
            flow: number | string;
            head: number | string;
        };
        ShareOutletRequest: {
            name: string;
            share: number;
            requiredFlow?: number | string;
            maximumFlow?: number | string;
        };
        PipeworkLoopRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterRequest"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankRequest"];
            intake?: components["schemas"]["IntakeRequest"];
            basin?: components["schemas"]["BasinRequest"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesRequest"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpRequest"];
            limits?: components["schemas"]["LimitsRequest"];
            staticHead?: number | string;
            boreChanges?: "abrupt" | "ignored";
            suction?: components["schemas"]["RunElementRequest"][];
            discharge: components["schemas"]["BranchRequest"];
        };
        RunElementRequest: components["schemas"]["PipeRequest"] | components["schemas"]["FittingRequest"] | components["schemas"]["ValveRequest"] | components["schemas"]["LossByCoefficientRequest"] | components["schemas"]["LossByLengthRequest"] | components["schemas"]["LossByPointRequest"];
        PipeRequest: {
            pipe: string | components["schemas"]["PipeBoreRequest"];
            length: number | string;
        };
        PipeBoreRequest: {
            insideDiameter: number | string;
            roughness?: number | string;
        };
        FittingRequest: {
            fitting: string;
            method?: "equivalent-diameters" | "two-k" | "three-k" | "fixed-k";
            count?: number;
            diameter?: number | string;
        };
        ValveRequest: {
            valve: string | components["schemas"]["ValveByKv"] | components["schemas"]["ValveByCv"];
            method?: "equivalent-diameters" | "two-k" | "three-k" | "fixed-k";
            opening?: number | string;
            diameter?: number | string;
        };
        LossByCoefficientRequest: {
            lossCoefficient: number;
            diameter?: number | string;
            boreChange?: boolean;
        };
        LossByLengthRequest: {
            equivalentLength: number | string;
            diameter?: number | string;
            roughness?: number | string;
        };
        LossByPointRequest: {
            loss: components["schemas"]["LossPointRequest"];
            boreChange?: boolean;
        };
        LossPointRequest: {
            head: number | string;
            flow: number | string;
        };
        BranchRequest: {
            run: components["schemas"]["RunElementRequest"][];
            outlet?: components["schemas"]["OutletRequest"];
            branches?: components["schemas"]["BranchRequest"][];
            split?: "tee-90";
            highestElevation?: number | string;
        };
        OutletRequest: {
            name: string;
            requiredFlow?: number | string;
            maximumFlow?: number | string;
            reach?: components["schemas"]["ReachRequest"];
            nozzleDiameter?: number | string;
            nozzleCount?: number;
            lossCoefficient?: number;
            staticHead?: number | string;
            exit?: "submerged" | "free";
        };
        ReachRequest: {
            distance: number | string;
            velocity: number | string;
        };
        LoopList: {
            items: components["schemas"]["Loop"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        SystemCurveTable: {
            points: components["schemas"]["SystemCurveTablePoint"][];
            requiredDuty: components["schemas"]["RequiredDuty"] | null;
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        DutyPoint: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            speed: number;
            flow: number;
            head: number;
            power: number;
            efficiency: number;
            turnover: number | null;
            annualEnergy: number;
            annualCost: number | null;
            lifeCycleCost: number | null;
            limitingOutlet: string | null;
            outlets: components["schemas"]["DutyOutlet"][];
            trims: components["schemas"]["Trim"][];
            perPump: components["schemas"]["DutyPerPump"];
            onePumpStopped: components["schemas"]["OnePumpStopped"] | null;
            uncertainty: components["schemas"]["DutyUncertainty"];
            npsh: components["schemas"]["Npsh"];
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: components["schemas"]["ScreenVelocities"] | null;
            heat: components["schemas"]["PumpHeat"];
            coveredIntake: components["schemas"]["CoveredIntake"] | null;
            cautions: components["schemas"]["Caution"][];
            intersections: components["schemas"]["Intersection"][];
            drainBack: components["schemas"]["DrainBack"] | null;
            summary: string;
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        PumpReference: {
            id: string | null;
            key?: string;
            name: string;
        };
        Tariff: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            holidays: string[];
            periods: components["schemas"]["TariffPeriod"][];
            otherwise: components["schemas"]["TariffOtherwise"];
            standingChargePerDay: number;
            units?: {
                [key: string]: string;
            };
        };
        TariffPeriod: {
            name: string;
            price: number;
            months?: number[];
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            from?: string;
            to?: string;
        };
        TariffOtherwise: {
            name: string;
            price: number;
        };
        TariffRequest: {
            name: string;
            holidays?: string[];
            periods?: components["schemas"]["TariffPeriod"][];
            otherwise: components["schemas"]["TariffOtherwise"];
            standingChargePerDay?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            key?: string;
        };
        TariffList: {
            items: components["schemas"]["Tariff"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        Schedule: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            tariff: string | null;
            phases: components["schemas"]["Phase"][];
            emergency?: components["schemas"]["Emergency"];
            year: number;
            hoursPerYear: number;
            currency: string;
            annualEnergy: number;
            annualCost: number | null;
            against: components["schemas"]["ScheduleAgainst"];
            fallback: components["schemas"]["Fallback"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Phase: {
            name: string;
            from: string;
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            factor?: number;
            requiredFlows?: {
                [key: string]: number;
            };
            dailyVolume?: components["schemas"]["VolumeDemand"];
            openings?: {
                [key: string]: number;
            };
            rampMinutes?: number;
            pulse?: components["schemas"]["Pulse"];
            setting: number;
            feasible: boolean;
            reason?: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            step?: number;
            limitedBy?: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh")[];
            power: number;
            flow: number;
            hoursPerYear: number;
            annualEnergy: number;
            annualCost: number | null;
            outlets: components["schemas"]["OutletFlow"][];
            otherSetting: number | null;
            optimalityGap: number | null;
        };
        VolumeDemand: {
            volume: number;
            minimumFlow?: number;
            maximumFlow?: number;
            mayStop: boolean;
            splits: boolean;
        };
        Pulse: {
            otherFactor: number;
            periodMinutes: number;
            share: number;
        };
        OutletFlow: {
            name: string;
            flow: number;
            requiredFlow: number | null;
            margin: number | null;
            velocity: number | null;
            shortage?: number;
        };
        Emergency: {
            factor: number;
            batteryEnergy?: number;
            setting: number;
            feasible: boolean;
            reason?: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            step?: number;
            limitedBy?: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh")[];
            power: number;
            flow: number;
            outlets: components["schemas"]["OutletFlow"][];
            batteryHours: number | null;
        };
        ConstantSetting: {
            setting: number;
            power: number;
            flow: number;
            annualEnergy: number;
            annualCost: number | null;
            annualEnergySaving: number;
            annualCostSaving: number | null;
        };
        Fallback: {
            setting: number;
            requiredFlowsMet: boolean;
            phasesBelowRequired: string[];
        };
        ScheduleRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            tariff?: string | null;
            phases: components["schemas"]["PhaseRequest"][];
            emergency?: components["schemas"]["EmergencyRequest"];
            units?: unknown;
            year?: unknown;
            hoursPerYear?: unknown;
            currency?: unknown;
            annualEnergy?: unknown;
            annualCost?: unknown;
            against?: unknown;
            fallback?: unknown;
            summary?: unknown;
            cautions?: unknown;
            dataBasis?: unknown;
            basis?: unknown;
        };
        PhaseRequest: {
            name: string;
            from: string;
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            factor?: number;
            requiredFlows?: {
                [key: string]: number | string;
            };
            dailyVolume?: components["schemas"]["VolumeDemandRequest"];
            openings?: {
                [key: string]: number | string;
            };
            rampMinutes?: number;
            pulse?: components["schemas"]["Pulse"];
            setting?: unknown;
            feasible?: unknown;
            reason?: unknown;
            step?: unknown;
            limitedBy?: unknown;
            power?: unknown;
            flow?: unknown;
            hoursPerYear?: unknown;
            annualEnergy?: unknown;
            annualCost?: unknown;
            outlets?: unknown;
            otherSetting?: unknown;
            optimalityGap?: unknown;
        };
        VolumeDemandRequest: {
            volume: number | string;
            minimumFlow?: number | string;
            maximumFlow?: number | string;
            mayStop?: boolean;
            splits?: boolean;
        };
        EmergencyRequest: {
            factor: number;
            batteryEnergy?: number | string;
            setting?: unknown;
            feasible?: unknown;
            reason?: unknown;
            step?: unknown;
            limitedBy?: unknown;
            power?: unknown;
            flow?: unknown;
            outlets?: unknown;
            batteryHours?: unknown;
        };
        Setpoint: {
            setting: number;
            feasible: boolean;
            reason?: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            step?: number;
            limitedBy?: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh")[];
            phase: string | null;
            from: string;
            to: string;
            power: number;
            flow: number;
            outlets: components["schemas"]["OutletFlow"][];
            fallback: components["schemas"]["Fallback"];
            latestReading?: components["schemas"]["LatestReading"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        LatestReading: {
            time: string;
            setting: number;
            power?: number;
            flow?: number;
            state: "stopped" | "other-setting" | "differs" | "as-set";
        };
        Setpoints: {
            items: components["schemas"]["SetpointStep"][];
            fallback: components["schemas"]["Fallback"];
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        SetpointStep: {
            setting: number;
            feasible: boolean;
            reason?: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            step?: number;
            limitedBy?: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh")[];
            phase: string | null;
            from: string;
            to: string;
            power: number;
            flow: number;
        };
        ReadingsAccepted: {
            accepted: number;
            merged: number;
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        ReadingsRequest: {
            readings: components["schemas"]["ReadingRequest"][];
        };
        ReadingRequest: {
            time: string;
            setting: number | string;
            power?: number | string;
            flow?: number | string;
            outletFlows?: {
                [key: string]: number | string;
            };
            head?: number | string;
            suctionPressure?: number | string;
            dischargePressure?: number | string;
        };
        ReadingList: {
            items: (components["schemas"]["Reading"] | components["schemas"]["MeanReading"])[];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        Reading: {
            time: string;
            setting: number;
            power?: number;
            flow?: number;
            outletFlows?: {
                [key: string]: number;
            };
            head?: number;
            suctionPressure?: number;
            dischargePressure?: number;
        };
        MeanReading: {
            from: string;
            to: string;
            day: string | null;
            readingCount: number;
            setting: number;
            power: number | null;
            flow: number | null;
            outletFlows: {
                [key: string]: number;
            };
            head: number | null;
            suctionPressure: number | null;
            dischargePressure: number | null;
        };
        Condition: {
            verdict: "not-enough-readings" | "baseline-forming" | "as-expected" | "changed" | "unexplained" | "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            provisional?: boolean;
            summary: string;
            causes: components["schemas"]["Cause"][];
            causePairs?: ("clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped")[][];
            statistic?: components["schemas"]["ConditionStatistic"];
            baseline?: components["schemas"]["Baseline"];
            entries: components["schemas"]["ConditionEntries"];
            evidence: components["schemas"]["Evidence"][];
            detectable: components["schemas"]["ConditionDetectable"][];
            course?: "sudden" | "gradual";
            onset?: components["schemas"]["ConditionOnset"];
            nextReading?: components["schemas"]["NextReading"];
            shortfallForecast?: components["schemas"]["ShortfallForecast"];
            waiting?: components["schemas"]["Waiting"];
            cleaningTask?: components["schemas"]["ConditionCleaningTask"];
            belowRequired?: components["schemas"]["ConditionBelowRequired"][];
            setAside?: components["schemas"]["ConditionSetAside"][];
            counts: components["schemas"]["ConditionCounts"];
            from?: string;
            to?: string;
            cleanedAt?: string[];
            series?: components["schemas"]["ResidualSeries"][];
            dataBasis: "entered" | "calibrated";
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Cause: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            probability: number;
            magnitude?: number;
            interval?: components["schemas"]["CauseInterval"];
            measure?: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outletNames?: string[];
            slip?: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
            factor?: number;
            pumpsRunning?: number;
        };
        Baseline: {
            from: string;
            to: string;
            startedBy: "request" | "service" | "cleaning" | "installation" | "first-reading";
            dayCount: number;
            requiredDayCount: number;
            complete: boolean;
            cleaningEffect?: components["schemas"]["BaselineCleaningEffect"][];
        };
        Evidence: components["schemas"]["EvidenceFlow"] | components["schemas"]["EvidencePower"] | components["schemas"]["EvidenceHead"] | components["schemas"]["EvidenceSuctionPressure"];
        NextReading: components["schemas"]["NextReadingFlow"] | components["schemas"]["NextReadingPower"] | components["schemas"]["NextReadingHead"] | components["schemas"]["NextReadingSuctionPressure"];
        ShortfallForecast: {
            outlet: string;
            at?: string;
            earliest: string;
            latest?: string;
            reason?: "growth-not-determined" | "too-far";
        };
        Waiting: {
            currency: string;
            annualExcessCost: number;
            nextYearCost: number;
            capReachedAt?: string;
            cheapestInterval?: components["schemas"]["CheapestInterval"];
        };
        CheapestInterval: {
            action: "cleaning" | "service";
            cost: number;
            costFrom: "request" | "maintenance-task" | "pump-service";
            everyDays: number;
            annualCost: number;
            limitedByShortfall: boolean;
        };
        ResidualSeries: {
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outlet?: string;
            points: components["schemas"]["ResidualSeriesPoint"][];
            baseline?: components["schemas"]["ResidualSeriesBaseline"];
        };
        BaselineRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            loop?: string;
            requestedFrom?: string | null;
            changedAt?: string | null;
            units?: unknown;
            from?: string;
        };
        Calibration: {
            parameters: components["schemas"]["CalibrationParameter"][];
            notIdentifiable: components["schemas"]["CalibrationNotIdentifiable"][];
            misfits: (components["schemas"]["MisfitFlow"] | components["schemas"]["MisfitHead"] | components["schemas"]["MisfitPower"])[];
            refusal?: components["schemas"]["CalibrationRefusal"];
            smallestMargin?: components["schemas"]["CalibrationSmallestMargin"];
            nextReading?: components["schemas"]["CalibrationNextReadingFlow"] | components["schemas"]["CalibrationNextReadingHead"] | components["schemas"]["CalibrationNextReadingPower"];
            nextReadings?: (components["schemas"]["CalibrationNextReadingFlow"] | components["schemas"]["CalibrationNextReadingHead"] | components["schemas"]["CalibrationNextReadingPower"])[];
            measuredSpeedMap?: components["schemas"]["MeasuredSpeedMap"];
            fit?: components["schemas"]["CalibrationFit"];
            counts: components["schemas"]["CalibrationCounts"];
            from?: string;
            to: string;
            applied: boolean;
            dataBasis: "entered" | "calibrated";
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        CalibrationRequest: {
            from?: string;
            to?: string;
            apply?: boolean;
            include?: ("nextReadings" | "speeds" | "fit")[];
        };
        Calibrations: {
            dataBasis: "entered" | "calibrated";
            items: components["schemas"]["CalibrationInHistory"][];
        };
        Recommendation: {
            best: components["schemas"]["Best"] | null;
            ranking: components["schemas"]["Duty"][];
            rejected: components["schemas"]["RejectedCandidate"][];
            counts: components["schemas"]["RecommendationCounts"];
            requiredDuty: components["schemas"]["RequiredDuty"] | null;
            trimEffect: components["schemas"]["TrimEffect"] | null;
            assuranceEffect: components["schemas"]["AssuranceEffect"] | null;
            losses: components["schemas"]["Losses"] | null;
            withoutScreenLimit: components["schemas"]["WithoutScreenLimit"] | null;
            drainBack: components["schemas"]["DrainBack"] | null;
            assumptions: components["schemas"]["Assumptions"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Best: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            speed: number;
            flow: number;
            head: number;
            power: number;
            efficiency: number;
            turnover: number | null;
            annualEnergy: number;
            annualCost: number | null;
            lifeCycleCost: number | null;
            limitingOutlet: string | null;
            outlets: components["schemas"]["DutyOutlet"][];
            trims: components["schemas"]["Trim"][];
            perPump: components["schemas"]["DutyPerPump"];
            onePumpStopped: components["schemas"]["OnePumpStopped"] | null;
            uncertainty: components["schemas"]["DutyUncertainty"];
            npsh: components["schemas"]["Npsh"];
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: components["schemas"]["ScreenVelocities"] | null;
            heat: components["schemas"]["PumpHeat"];
            coveredIntake: components["schemas"]["CoveredIntake"] | null;
            cautions: components["schemas"]["Caution"][];
            closeTo: number[];
        };
        Duty: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            speed: number;
            flow: number;
            head: number;
            power: number;
            efficiency: number;
            turnover: number | null;
            annualEnergy: number;
            annualCost: number | null;
            lifeCycleCost: number | null;
            limitingOutlet: string | null;
            outlets: components["schemas"]["DutyOutlet"][];
            trims: components["schemas"]["Trim"][];
            perPump: components["schemas"]["DutyPerPump"];
            onePumpStopped: components["schemas"]["OnePumpStopped"] | null;
            uncertainty: components["schemas"]["DutyUncertainty"];
            npsh: components["schemas"]["Npsh"];
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: components["schemas"]["ScreenVelocities"] | null;
            heat: components["schemas"]["PumpHeat"];
            coveredIntake: components["schemas"]["CoveredIntake"] | null;
            cautions: components["schemas"]["Caution"][];
        };
        RejectedCandidate: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            reason: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            reasons: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting")[];
            detail: string;
            shortfall: components["schemas"]["Shortfall"] | null;
            remedy?: components["schemas"]["Remedy"];
        };
        Losses: {
            hydraulicPower: number;
            rows: components["schemas"]["Loss"][];
        };
        RecommendationRequest: {
            loop: string | components["schemas"]["SystemCurveLoopRequest"] | components["schemas"]["PipeworkLoopRequest"];
            pumps?: (string | components["schemas"]["PumpRequest"] | components["schemas"]["CountedPump"])[];
            price?: number;
            tariff?: string | components["schemas"]["TariffRequest"];
            currency?: string;
            hoursPerDay?: number;
            balancing?: "as-built" | "trimmed";
            objective?: "energy-cost" | "life-cycle-cost";
            lifeCycle?: components["schemas"]["LifeCycleTerms"];
            limits?: components["schemas"]["LimitsRequest"];
            assurance?: "calibration" | components["schemas"]["AssuranceByGrade"] | components["schemas"]["AssuranceByMargin"] | components["schemas"]["AssuranceByFrictionMultiplier"];
            heat?: components["schemas"]["HeatTerms"];
            detail?: "plain" | "losses";
            rankingLimit?: number;
        };
        CountedPump: {
            pump: string | components["schemas"]["PumpRequest"];
            count?: number;
        };
        LifeCycleTerms: {
            years?: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            minutesPerFailure?: number;
        };
        HeatTerms: {
            cop: number;
            mode: "cooling" | "heating";
            inRanking?: boolean;
        };
        Design: {
            best: components["schemas"]["BestDesign"] | null;
            ranking: components["schemas"]["DesignRow"][];
            frontier: components["schemas"]["DesignFrontier"][];
            rejected: components["schemas"]["RejectedDesign"][];
            solution: "optimal" | "bounded";
            optimalityGap: number;
            counts: components["schemas"]["DesignCounts"];
            assumptions: components["schemas"]["DesignAssumptions"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        BestDesign: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            flow: number;
            requiredHead: number;
            head: number;
            power: number;
            annualEnergy: number;
            annualCost: number;
            presentValue: number;
            pumpCost: number;
            energyCost: number;
            pipeCost: number;
            trimCost: number;
            runs: components["schemas"]["DesignRun"][];
            trims: components["schemas"]["DesignTrim"][];
            sizeChanges: components["schemas"]["SizeChange"][];
            closeTo: number[];
            uncertainty: components["schemas"]["DutyUncertainty"];
            npsh: components["schemas"]["Npsh"];
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            cautions: components["schemas"]["Caution"][];
            loop: components["schemas"]["DesignedLoop"];
        };
        DesignRun: {
            pointer: string;
            pipe: string | components["schemas"]["PipeBore"];
            length: number;
            velocity: number;
            head: number;
            cost: number;
        };
        DesignTrim: {
            pointer: string;
            head: number | null;
            lossCoefficient: number | null;
            kv: number | null;
        };
        SizeChange: {
            pointer: string;
            direction: "smaller" | "larger";
            pipe: string | components["schemas"]["PipeBore"];
            candidate?: number;
            setting?: number;
            cost?: number;
            saving?: number;
            presentValue?: number;
        };
        DesignedLoop: {
            name: string;
            water: components["schemas"]["Water"];
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            siphonBreakDepth?: number;
            overflowCapacity?: number;
            gauges?: components["schemas"]["Gauges"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            staticHead: number;
            boreChanges?: "abrupt" | "ignored";
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
        };
        DesignRow: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            flow: number;
            requiredHead: number;
            head: number;
            power: number;
            annualEnergy: number;
            annualCost: number;
            presentValue: number;
            pumpCost: number;
            energyCost: number;
            pipeCost: number;
            trimCost: number;
        };
        RejectedDesign: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            reason: "no-price" | "pipe-velocity" | "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            reasons: ("no-price" | "pipe-velocity" | "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting")[];
            detail: string;
            pointer?: string;
        };
        DesignRequest: {
            loop: string | components["schemas"]["DesignLoop"];
            pumps?: (string | components["schemas"]["PumpRequest"] | components["schemas"]["CountedPump"])[];
            pipePrices?: components["schemas"]["PipePrice"][];
            trimPrice?: number;
            price?: number;
            tariff?: string | components["schemas"]["TariffRequest"];
            hoursPerDay?: number;
            years?: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            limits?: components["schemas"]["DesignLimits"];
            rankingLimit?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        DesignLoop: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterRequest"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankRequest"];
            intake?: components["schemas"]["IntakeRequest"];
            basin?: components["schemas"]["BasinRequest"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesRequest"];
            meters?: components["schemas"]["Meter"][];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpRequest"];
            limits?: components["schemas"]["LimitsRequest"];
            staticHead?: number | string;
            boreChanges?: "abrupt" | "ignored";
            suction?: components["schemas"]["DesignElement"][];
            discharge: components["schemas"]["DesignBranch"];
        };
        DesignElement: components["schemas"]["PipeList"] | components["schemas"]["PipeRequest"] | components["schemas"]["FittingRequest"] | components["schemas"]["ValveRequest"] | components["schemas"]["LossByCoefficientRequest"] | components["schemas"]["LossByLengthRequest"] | components["schemas"]["LossByPointRequest"];
        PipeList: {
            pipes: (string | components["schemas"]["PipeBoreRequest"])[];
            length: number | string;
        };
        DesignBranch: {
            run: components["schemas"]["DesignElement"][];
            outlet?: components["schemas"]["OutletRequest"];
            branches?: components["schemas"]["DesignBranch"][];
            split?: "tee-90";
            highestElevation?: number | string;
        };
        PipePrice: {
            pipe: string | components["schemas"]["PipeBoreRequest"];
            price: number;
        };
        DesignLimits: {
            throughSlotVelocity?: (number | string) | null;
            cloggedFraction?: number;
            screenBasis?: "mean" | "peak";
            pipeVelocity?: (number | string) | null;
            maximumEfficiency?: number;
            enforceNpsh?: boolean;
            allowExtrapolation?: boolean;
            allowReverseFlow?: boolean;
            gravity?: "report" | "reject";
        };
        ScreenSize: {
            shape: "cylinder" | "flat" | "box";
            length: number;
            count: number;
            diameter: number | null;
            openFraction: number;
            meanVelocity: number;
            peakVelocity: number;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        ScreenSizeRequest: components["schemas"]["ScreenSizeRequestCylinder"] | components["schemas"]["ScreenSizeRequestFlat"] | components["schemas"]["ScreenSizeRequestBox"];
        LeakExposure: {
            flow: number;
            timeToHole: number;
            timeToLevel: number | null;
            volume: number;
            floodDepth: number | null;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        LeakExposureRequest: {
            opening: components["schemas"]["LeakOpening"];
            depth: number | string;
            drop?: number | string;
            level?: number | string;
            tank: components["schemas"]["LeakTank"];
            floorArea?: number | string;
            dischargeCoefficient?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        LeakOpening: components["schemas"]["LeakOpeningByDiameter"] | components["schemas"]["LeakOpeningByGap"];
        LeakTank: {
            volume?: number | string;
            area: number | string;
        };
        Comparison: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            stale: boolean;
            currency: string;
            options: components["schemas"]["ComparisonOption"][];
            cheapest: number | null;
            breakEvenPrice: number | null;
            breakEvenValueAtRisk: number | null;
            sensitivity: components["schemas"]["ComparisonSensitivity"][];
            assumptions: components["schemas"]["ComparisonAssumptions"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["ComparisonBasis"];
            units: {
                [key: string]: string;
            };
        };
        ComparisonOption: {
            name: string;
            feasible: boolean;
            presentValue: number;
            presentValueInterval: components["schemas"]["ComparisonOptionPresentValueInterval"];
            elements: components["schemas"]["ComparisonYearElements"];
            yearByYear: components["schemas"]["ComparisonYear"][];
            payback: components["schemas"]["ComparisonOptionPayback"] | null;
            breakEvenPrice: number | null;
            breakEvenValueAtRisk: number | null;
            annualEnergy: number;
            annualCost: number;
            upkeep: components["schemas"]["ComparisonOptionUpkeep"];
            annualExpectedLoss: components["schemas"]["ComparisonOptionAnnualExpectedLoss"];
            assemblies: components["schemas"]["ComparisonAssembly"][];
            cautions: components["schemas"]["Caution"][];
        };
        ComparisonYear: {
            year: number;
            elements: components["schemas"]["ComparisonYearElements"];
            total: number;
            presentValue: number;
            runningCost: number;
            cumulativePresentValue: number;
        };
        ComparisonAssembly: {
            loop: components["schemas"]["ComparisonAssemblyLoop"] | null;
            pump: components["schemas"]["PumpReference"] | null;
            count: number;
            new: boolean;
            setting: number | null;
            settingFrom: "stated" | "schedule" | "installed" | "recommended" | "highest" | "power";
            feasible: boolean;
            detail: string | null;
            power: number;
            annualEnergy: number;
            annualCost: number;
            remainingShare: number | null;
            failuresPerDeviceYear: components["schemas"]["ComparisonAssemblyFailuresPerDeviceYear"] | null;
            annualUpkeepHours: number;
            purchaseCost: number;
            expectedLifeYears: number | null;
            ageYears: number;
        };
        ComparisonSensitivity: {
            input: "energy-price" | "energy-of-option" | "purchase-prices" | "labour-rate" | "attention" | "failures" | "value-at-risk" | "discount-rate" | "inflation" | "energy-inflation";
            savingIfLower: number;
            savingIfHigher: number;
            largestChange: number;
            changesCheapest: boolean;
        };
        ComparisonBasis: {
            modelVersion: string;
            loops: components["schemas"]["ComparisonBasisLoop"][];
            pumps: components["schemas"]["ComparisonBasisPump"][];
            tariffs: components["schemas"]["ComparisonBasisTariff"][];
            schedules: components["schemas"]["ComparisonBasisSchedule"][];
        };
        ComparisonRequest: {
            name?: string;
            years: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            price?: number;
            tariff?: string | components["schemas"]["TariffRequest"];
            currency?: string;
            minutesPerFailure?: number;
            options: components["schemas"]["ComparisonOptionRequest"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ComparisonOptionRequest: {
            name: string;
            assemblies: components["schemas"]["ComparisonAssemblyRequest"][];
            extras?: components["schemas"]["ComparisonExtra"][];
            risk?: components["schemas"]["ComparisonRisk"];
        };
        ComparisonAssemblyRequest: {
            loop?: string | components["schemas"]["SystemCurveLoopRequest"] | components["schemas"]["PipeworkLoopRequest"];
            consolidate?: components["schemas"]["Consolidation"];
            pump?: string | components["schemas"]["PumpRequest"];
            count?: number;
            new?: boolean;
            ageYears?: number;
            riskShare?: number;
            power?: number | string;
            setting?: number | string;
            hoursPerDay?: number;
            balancing?: "as-built" | "trimmed";
        };
        Consolidation: {
            loops: (string | components["schemas"]["SystemCurveLoopRequest"] | components["schemas"]["PipeworkLoopRequest"])[];
            suction: components["schemas"]["RunElementRequest"][];
            manifold: components["schemas"]["RunElementRequest"][];
            intake?: components["schemas"]["IntakeRequest"];
        };
        ComparisonExtra: {
            name: string;
            kind: "pipework" | "installation" | "operation" | "environment" | "disposal";
            cost: number;
            year: number;
            everyYears?: number;
        };
        ComparisonRisk: {
            valueAtRisk: number;
            survivalHours: number;
            meanRestoreHours: number;
            requiredShare?: number;
        };
        ComparisonList: {
            items: components["schemas"]["ComparisonOverview"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        ComparisonOverview: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            currency: string;
            optionCount: number;
            cheapest: string | null;
            summary: string;
        };
        BillOfMaterials: {
            materials: components["schemas"]["BillOfMaterialsMaterial"][];
            total: number | null;
            currency: string;
            complete: boolean;
            unpriced: string[];
            unnamed: string[];
            comparisonExtra: components["schemas"]["BillOfMaterialsComparisonExtra"] | null;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        BillOfMaterialsRequest: {
            loop: string | components["schemas"]["SystemCurveLoopRequest"] | components["schemas"]["PipeworkLoopRequest"];
            prices?: components["schemas"]["MaterialPrice"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        MaterialPrice: {
            name: string;
            price: number;
            stockLength?: number | string;
        };
        Spares: {
            spares: number;
            probability: number;
            meanDemand: number;
            atHighRate: components["schemas"]["SparesAtHighRate"];
            failuresPerDeviceYear: components["schemas"]["SparesFailuresPerDeviceYear"];
            positions: number;
            leadTimeDays: number;
            confidence: number;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
        };
        SparesRequest: {
            pump?: string;
            failures?: components["schemas"]["Failures"];
            positions?: number;
            leadTimeDays: number;
            confidence?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        UpgradePlan: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            years: number;
            currency: string;
            presentValue: number;
            solution: "optimal" | "time-limit";
            optimalityGap: number | null;
            summary: string;
            budget: number[];
            discountRate: number;
            carryOver: boolean;
            candidates: components["schemas"]["Upgrade"][];
            upgrades: components["schemas"]["PlannedUpgrade"][];
            leftOut: components["schemas"]["UpgradeLeftOut"][];
            yearByYear: components["schemas"]["UpgradePlanYear"][];
            moreBudget: components["schemas"]["UpgradePlanMoreBudget"];
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Upgrade: {
            name: string;
            cost: number;
            yearlySaving: number;
            lifeYears: number;
            group?: string;
            firstYear?: number;
            lastYear?: number;
            mandatory?: boolean;
        };
        PlannedUpgrade: {
            candidate: number;
            name: string;
            year: number;
            cost: number;
            presentValue: number;
        };
        UpgradeLeftOut: {
            candidate: number;
            name: string;
            reason: "outside-plan" | "does-not-pay" | "over-budget" | "group" | "no-room";
            detail: string;
            additionalBudget: number | null;
        };
        UpgradePlanYear: {
            year: number;
            newBudget: number;
            available: number;
            spent: number;
            carriedOver: number;
        };
        UpgradePlanMoreBudget: {
            budget: number[];
            presentValue: number;
            gain: number;
            solution: "optimal" | "time-limit";
            optimalityGap: number | null;
        };
        UpgradePlanRequest: {
            name?: string;
            years: number;
            budget: number[];
            discountRate: number;
            carryOver?: boolean;
            currency?: string;
            candidates: components["schemas"]["Upgrade"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        UpgradePlanList: {
            items: components["schemas"]["UpgradePlanOverview"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        UpgradePlanOverview: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            years: number;
            currency: string;
            presentValue: number;
            solution: "optimal" | "time-limit";
            optimalityGap: number | null;
            summary: string;
        };
        SiteSummary: {
            counts: components["schemas"]["SiteCounts"];
            power: number;
            annualEnergy: number;
            annualCost: number | null;
            currency: string;
            belowRequired: components["schemas"]["BelowRequired"];
            canTurnDown: components["schemas"]["CanTurnDown"];
            upkeep: components["schemas"]["SiteUpkeep"];
            largestSavings: components["schemas"]["SummarySaving"][];
            assumptions: components["schemas"]["SummaryAssumptions"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        SiteCounts: {
            loops: number;
            scheduled: number;
            withoutPump: number;
            withoutRequirement: number;
            unsolved: number;
            installedPumps: number;
            storedPumps: number;
        };
        BelowRequired: {
            count: number;
            loops: components["schemas"]["BelowRequiredLoop"][];
        };
        CanTurnDown: {
            count: number;
            loops: components["schemas"]["CanTurnDownLoop"][];
        };
        SiteUpkeep: {
            service: components["schemas"]["SiteUpkeepService"];
            tasks: components["schemas"]["SiteUpkeepTasks"];
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
        };
        SummarySaving: {
            loop: components["schemas"]["RecordReference"];
            kind: "setting" | "pump";
            pump: components["schemas"]["SummarySavingPump"] | null;
            count: number;
            setting: number;
            annualEnergySaving: number;
            annualCostSaving: number | null;
            purchaseCost: number | null;
            payback: components["schemas"]["SummaryPayback"];
            turnDown: components["schemas"]["SummarySavingTurnDown"] | null;
        };
        SummaryPayback: {
            simple: number | null;
            beyondTurnDown: number | null;
        };
        SummaryAssumptions: {
            year: number;
            price: number | null;
            tariff: string | null;
            hoursPerDay: number;
        };
        MaintenanceTask: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            kind: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            every: string;
            minutes: number;
            parts: number;
            loop?: string;
            pump?: string;
            firstDue: string;
            nextDue: string;
            due: boolean;
            overdue: boolean;
            daysUntilDue: number;
            lastDone: string | null;
            completionCount: number;
            timesPerYear: number;
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
            currency: string;
            cautions?: components["schemas"]["Caution"][];
            units?: {
                [key: string]: string;
            };
        };
        MaintenanceTaskRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            key?: string;
            name: string;
            kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            every: string;
            minutes: number;
            parts?: number;
            loop?: string;
            pump?: string;
            firstDue: string;
            units?: unknown;
            nextDue?: unknown;
            due?: unknown;
            overdue?: unknown;
            daysUntilDue?: unknown;
            lastDone?: unknown;
            completionCount?: unknown;
            timesPerYear?: unknown;
            annualHours?: unknown;
            annualParts?: unknown;
            annualCost?: unknown;
            currency?: unknown;
            cautions?: unknown;
        };
        MaintenanceTaskList: {
            items: components["schemas"]["MaintenanceTask"][];
            next: string | null;
            today: string;
            upkeep: components["schemas"]["Upkeep"];
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        Upkeep: {
            counts: components["schemas"]["UpkeepCounts"];
            annualHours: number;
            annualParts: number;
            annualLabour: number | null;
            annualCost: number | null;
            currency: string;
        };
        Completion: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            task: string;
            at: string;
            day: string;
            minutes?: number;
            note?: string;
            nextDue?: string;
            units?: {
                [key: string]: string;
            };
        };
        CompletionRequest: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            task?: unknown;
            at: string;
            day?: unknown;
            minutes?: number;
            note?: string;
            units?: unknown;
            nextDue?: unknown;
        };
        CompletionList: {
            items: components["schemas"]["Completion"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        StarterTasks: {
            items: components["schemas"]["MaintenanceTask"][];
            existingCount: number;
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        StarterTasksRequest: {
            firstDue?: string;
        };
        PipeTable: {
            items: components["schemas"]["PipeDefinition"][];
            units: {
                [key: string]: string;
            };
        };
        FittingTable: {
            items: components["schemas"]["FittingDefinition"][];
        };
        WaterProperties: {
            temperature: number;
            salinity: number;
            density: number;
            viscosity: number;
            kinematicViscosity: number;
            vapourPressure: number;
            source: string;
            units: {
                [key: string]: string;
            };
        };
        CautionTable: {
            items: components["schemas"]["CautionDefinition"][];
        };
        SiteExport: {
            format: "loopwright-site";
            formatVersion: 2;
            site: components["schemas"]["Site"];
            tariffs: components["schemas"]["Tariff"][];
            pumps: components["schemas"]["Pump"][];
            loops: components["schemas"]["Loop"][];
            schedules: components["schemas"]["ScheduleRequest"][];
            comparisons: components["schemas"]["StoredAnswer"][];
            upgradePlans: components["schemas"]["StoredAnswer"][];
            maintenanceTasks: components["schemas"]["MaintenanceTaskRequest"][];
            completions: components["schemas"]["CompletionRequest"][];
            calibrations: components["schemas"]["AppliedCalibration"][];
            baselines: components["schemas"]["BaselineRequest"][];
            readings: components["schemas"]["ReadingsBlock"][];
            units: {
                [key: string]: string;
            };
        };
        StoredAnswer: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            document: {
                [key: string]: unknown;
            };
        };
        AppliedCalibration: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            loop: string;
            sequence: number;
            appliedAt: string;
            undoneAt: string | null;
            scope: string;
            inUse: boolean;
            calibration: components["schemas"]["CalibrationResult"];
        };
        ReadingsBlock: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            loop: string;
            readings: components["schemas"]["Reading"][];
        };
        ImportResult: {
            counts: components["schemas"]["ImportResultCounts"];
        };
        SiteExportRequest: {
            format: "loopwright-site";
            formatVersion: 2;
            site: components["schemas"]["SiteRequest"];
            tariffs?: components["schemas"]["TariffRequest"][];
            pumps?: components["schemas"]["PumpRequest"][];
            loops?: components["schemas"]["LoopRequest"][];
            schedules?: components["schemas"]["ScheduleRequest"][];
            comparisons?: components["schemas"]["StoredAnswerRequest"][];
            upgradePlans?: components["schemas"]["StoredAnswerRequest"][];
            maintenanceTasks?: components["schemas"]["MaintenanceTaskRequest"][];
            completions?: components["schemas"]["CompletionRequest"][];
            calibrations?: components["schemas"]["AppliedCalibrationRequest"][];
            baselines?: components["schemas"]["BaselineRequest"][];
            readings?: components["schemas"]["ReadingsBlockRequest"][];
            units?: unknown;
        };
        StoredAnswerRequest: {
            document: {
                [key: string]: unknown;
            };
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        AppliedCalibrationRequest: {
            loop: string;
            sequence: number;
            appliedAt: string;
            undoneAt: string | null;
            scope: string;
            inUse: boolean;
            calibration: components["schemas"]["CalibrationResult"];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ReadingsBlockRequest: {
            loop: string;
            readings: components["schemas"]["ReadingRequest"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ProbeStatus: {
            state: "ok";
            programVersion: string;
        };
        OpenApiDocument: {
            [key: string]: unknown;
        };
        CurvesHeadFitKnot: {
            flow: number;
            head: number;
            slope: number;
        };
        CurvesHeadFitRange: {
            min: number;
            max: number;
        };
        CurvesPowerFitFlowRange: {
            min: number;
            max: number;
        };
        CurvesBestEfficiencyPoint: {
            flow: number;
            head: number;
            efficiency: number;
        };
        CurvePoint: {
            setting: number;
            flow: number;
            head: number;
            power: number;
            efficiency: number;
        };
        BasisLoop: {
            id: string | null;
            version: number | null;
        };
        BasisPump: {
            id: string | null;
            version: number | null;
        };
        SystemCurveTablePointOutlet: {
            name: string;
            flow: number;
        };
        RequiredDuty: {
            flow: number;
            head: number;
            limitingOutlet: string;
        };
        OutletReach: {
            velocity: number;
            distance: number;
        };
        Trim: {
            pointer: string;
            outletNames: string[];
            closed: boolean;
            flow: number;
            head: number | null;
            lossCoefficient: number | null;
            diameter: number | null;
            kv: number | null;
            valvePointer: string | null;
            opening: number | null;
        };
        DutyPerPump: {
            flow: number;
            power: number;
        };
        OutletOnePumpStopped: {
            name: string;
            flow: number;
            requiredFlow: number | null;
            margin: number | null;
        };
        FlowInterval: {
            low: number;
            high: number;
        };
        PowerInterval: {
            low: number;
            high: number;
        };
        AnnualEnergyInterval: {
            low: number;
            high: number;
        };
        PowerLawsPower: {
            low: number;
            high: number;
        };
        PowerLawsAnnualEnergy: {
            low: number;
            high: number;
        };
        DutyUncertaintyMargin: {
            low: number;
            high: number;
        };
        Npsh: {
            available: number;
            required?: number;
            ratio?: number;
        };
        ScreenVelocities: {
            meanVelocity: number;
            peakVelocity: number;
            cloggedFraction: number;
        };
        PumpHeat: {
            power: number;
            motorEfficiencyAssumed: boolean;
            dailyRise: number | null;
            annualEnergy: number | null;
            annualCost: number | null;
        };
        CoveredIntake: {
            suctionHead: number;
            force: number;
        };
        Intersection: {
            flow: number;
            head: number;
            stable: boolean;
        };
        DrainBack: {
            volume: number;
            freeVolume: number | null;
            floods: boolean | null;
            maximumSiphonBreakDepth: number | null;
        };
        ScheduleAgainst: {
            constantHighest: components["schemas"]["ConstantSetting"];
            installed: components["schemas"]["ConstantSetting"];
        };
        ConditionStatistic: {
            value: number;
            threshold: number;
            windowDays: number;
        };
        ConditionEntriesDifferenceInterval: {
            low: number;
            high: number;
        };
        ConditionDetectable: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            magnitude?: number;
            flowChange?: number;
        };
        ConditionOnset: {
            earliest: string;
            latest: string;
        };
        ConditionCleaningTask: {
            id: string;
            name: string;
            nextDue: string;
        };
        ConditionBelowRequired: {
            outlet: string;
            flow: number;
            requiredFlow: number;
        };
        ConditionSetAside: {
            time: string;
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outlet?: string;
            slip: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
            factor: number;
        };
        ConditionCounts: {
            readings: number;
            judged: number;
            used: number;
            stopped: number;
            closedValve: number;
            rareSetting: number;
            setAside: number;
        };
        CauseInterval: {
            low: number;
            high: number;
        };
        BaselineCleaningEffect: {
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outlet?: string;
            change: number;
            wonBack?: number;
        };
        EvidenceFlowInterval: {
            low: number;
            high: number;
        };
        NextReadingFlowExpected: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            value: number;
        };
        NextReadingPowerExpected: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            value: number;
        };
        NextReadingHeadExpected: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            value: number;
        };
        NextReadingSuctionPressureExpected: {
            cause: "clogged-intake" | "clogged-discharge" | "clogged-branch" | "worn-pump" | "speed-low" | "draws-more" | "less-resistance" | "meter-drift" | "unit-slip" | "pump-stopped";
            value: number;
        };
        ResidualSeriesPoint: {
            time: string;
            residual: number;
            readingCount: number;
        };
        ResidualSeriesBaseline: {
            residual: number;
            low: number;
            high: number;
        };
        CalibrationParameterInterval: {
            low: number;
            high: number;
        };
        CalibrationNotIdentifiable: {
            name: "friction" | "head" | "power";
            reason: "no-power-readings" | "no-flow-readings" | "ratio-alone" | "not-distinct" | "implausible" | "ill-conditioned" | "too-uncertain";
            detail: string;
            conditionNumber?: number;
            standardError?: number;
            helpfulReadings: string[];
        };
        MisfitFlow: {
            measure: "flow" | "outletFlow";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            time: string;
            measured: number;
            predicted: number;
            residual: number;
            slip?: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
        };
        MisfitHead: {
            measure: "head";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            time: string;
            measured: number;
            predicted: number;
            residual: number;
            slip?: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
        };
        MisfitPower: {
            measure: "power";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            time: string;
            measured: number;
            predicted: number;
            residual: number;
            slip?: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
        };
        CalibrationRefusal: {
            code: "nothing-determined" | "ratio-too-uncertain" | "readings-scatter" | "readings-do-not-fit";
            measure?: "flow" | "outletFlow" | "head" | "power";
            actual?: number;
            limit?: number;
        };
        MarginInterval: {
            low: number;
            high: number;
        };
        MeasuredSpeedMapPoint: {
            setting: number;
            speed: number;
            standardError: number | null;
        };
        CalibrationFit: {
            covariance: number[][];
        };
        CalibrationCounts: {
            used: number;
            distinct: number;
        };
        CalibrationInHistoryFactors: {
            friction: number;
            head: number;
            power: number;
        };
        RecommendationCounts: {
            candidates: number;
            feasible: number;
            rejected: number;
        };
        TrimEffect: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            annualEnergy: number;
            annualCost: number | null;
            annualEnergySaving: number;
            annualCostSaving: number | null;
        };
        AssuranceEffectWithoutAssurance: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            annualEnergy: number;
            annualCost: number | null;
        };
        AssuranceEffectWorstCaseOutlet: {
            name: string;
            flow: number;
            requiredFlow: number | null;
        };
        WithoutScreenLimitScreen: {
            length: number;
            count: number;
        };
        AssumptionsTariff: {
            id: string | null;
            key?: string;
            name: string;
            year: number;
        };
        AssumptionsLifeCycle: {
            years: number;
            discountRate: number;
            inflation: number;
            energyInflation: number;
            labourRate: number;
            minutesPerFailure: number;
        };
        AssuranceByGrade: {
            grade: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
        };
        AssuranceByMargin: {
            margin: number;
        };
        AssuranceByFrictionMultiplier: {
            frictionMultiplier: number;
        };
        AssumptionsHeat: {
            cop: number;
            mode: "cooling" | "heating";
            inRanking: boolean;
        };
        AssumptionsLimits: {
            throughSlotVelocity: number | null;
            cloggedFraction: number;
            screenBasis: "mean" | "peak";
            pipeVelocity: number;
            maximumEfficiency: number;
            enforceNpsh: boolean;
            allowExtrapolation: boolean;
            allowReverseFlow: boolean;
            gravity: "report" | "reject";
        };
        Shortfall: {
            outlet: string;
            setting: number;
            flow: number;
            requiredFlow: number;
        };
        RemedyThrottle: {
            head: number;
            kv: number;
            cv: number;
        };
        SavingOnGrid: {
            candidate: number;
            setting: number;
            annualEnergy: number;
            annualCost: number | null;
        };
        SavingOffGrid: {
            setting: number;
            annualEnergy: number;
            annualCost: number | null;
        };
        DesignFrontier: {
            head: number;
            cost: number;
        };
        DesignCounts: {
            candidates: number;
            feasible: number;
            rejected: number;
            lists: number;
        };
        DesignAssumptionsTariff: {
            id: string | null;
            key?: string;
            name: string;
            year: number;
        };
        DesignAssumptionsLimits: {
            throughSlotVelocity: number | null;
            cloggedFraction: number;
            screenBasis: "mean" | "peak";
            pipeVelocity: number | null;
            maximumEfficiency: number;
            enforceNpsh: boolean;
            allowExtrapolation: boolean;
            allowReverseFlow: boolean;
            gravity: "report" | "reject";
        };
        ScreenSizeRequestCylinder: {
            shape: "cylinder";
            diameter: number | string;
            flow: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            cloggedFraction?: number;
            throughSlotVelocity?: number | string;
            smallestAnimal?: number | string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ScreenSizeRequestFlat: {
            shape: "flat";
            width: number | string;
            flow: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            cloggedFraction?: number;
            throughSlotVelocity?: number | string;
            smallestAnimal?: number | string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ScreenSizeRequestBox: {
            shape: "box";
            width: number | string;
            height: number | string;
            flow: number | string;
            openFraction?: number;
            slot?: number | string;
            hole?: number | string;
            pitch?: number | string;
            pattern?: "square" | "staggered";
            cloggedFraction?: number;
            throughSlotVelocity?: number | string;
            smallestAnimal?: number | string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        LeakOpeningByDiameter: {
            diameter: number | string;
        };
        LeakOpeningByGap: {
            gap: number | string;
            fittingDiameter: number | string;
        };
        ComparisonAssumptions: {
            years: number;
            discountRate: number;
            inflation: number;
            energyInflation: number;
            labourRate: number;
            price: number;
            tariff: string | null;
            minutesPerFailure: number;
            notes: string[];
        };
        ComparisonOptionPresentValueInterval: {
            low: number;
            high: number;
        };
        ComparisonYearElements: {
            purchase: number;
            installation: number;
            energy: number;
            operation: number;
            maintenance: number;
            downtime: number;
            environment: number;
            disposal: number;
        };
        ComparisonOptionPayback: {
            simple: number | null;
            discounted: number | null;
        };
        ComparisonOptionUpkeep: {
            pumpCount: number;
            annualHours: number;
            annualCost: number;
        };
        ComparisonOptionAnnualExpectedLoss: {
            value: number;
            low: number;
            high: number;
        };
        ComparisonAssemblyLoop: {
            id: string | null;
            key?: string;
            name: string;
        };
        ComparisonAssemblyFailuresPerDeviceYear: {
            value: number;
            low: number;
            high: number;
        };
        ComparisonBasisLoop: {
            id: string;
            version: number | null;
        };
        ComparisonBasisPump: {
            id: string;
            version: number | null;
        };
        ComparisonBasisTariff: {
            id: string;
            version: number | null;
        };
        ComparisonBasisSchedule: {
            id: string;
            version: number | null;
        };
        BillOfMaterialsMaterial: {
            kind: "pipe" | "fitting" | "valve" | "tee" | "nozzle" | "screen";
            name: string;
            count: number;
            length: number | null;
            piecesToBuy: number | null;
            cost: number | null;
        };
        BillOfMaterialsComparisonExtra: {
            name: string;
            kind: "pipework";
            cost: number;
            year: number;
        };
        SparesAtHighRate: {
            spares: number;
            probability: number;
            meanDemand: number;
        };
        SparesFailuresPerDeviceYear: {
            value: number;
            low: number;
            high: number;
        };
        RecordReference: {
            id: string;
            key?: string;
            name: string;
        };
        SiteUpkeepService: {
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
        };
        SiteUpkeepTasks: {
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
        };
        SummarySavingPump: {
            id: string;
            key?: string;
            name: string;
        };
        SummarySavingTurnDown: {
            setting: number;
            annualEnergySaving: number;
            annualCostSaving: number | null;
        };
        UpkeepCounts: {
            tasks: number;
            due: number;
            overdue: number;
        };
        PipeDefinition: {
            name: string;
            standard: string;
            nominal: string;
            outsideDiameter: number;
            minimumWall: number;
            insideDiameter: number;
            roughness: number;
            source: string;
            verified: boolean;
        };
        FittingDefinitionPartOpening: {
            opening: number;
            addedLossCoefficient: number;
        };
        CautionDefinition: {
            code: string;
            severity: "note" | "warning" | "danger";
            text: string;
            source: string;
        };
        AppliedParameterInterval: {
            low: number;
            high: number;
        };
        AppliedFactors: {
            friction: number;
            head: number;
            power: number;
        };
        CalibrationResultWorstCase: {
            friction: number;
            head: number;
        };
        CalibrationResultPump: {
            id: string;
            fit: {
                [key: string]: unknown;
            };
        };
        ImportResultCounts: {
            tariffs: number;
            pumps: number;
            loops: number;
            schedules: number;
            comparisons: number;
            upgradePlans: number;
            maintenanceTasks: number;
            completions: number;
            calibrations: number;
            baselines: number;
            readings: number;
        };
        CurvesHeadFit: {
            shape: "sum-of-powers" | "piecewise" | "assumed";
            exponents?: number[];
            coefficients?: number[];
            knots?: components["schemas"]["CurvesHeadFitKnot"][];
            flowScale: number;
            range: components["schemas"]["CurvesHeadFitRange"];
            r2?: number;
            standardError?: number;
            residuals: number[];
            leaveOneOut?: number;
        };
        CurvesPowerFit: {
            law: "exponent" | "fixed-loss";
            fixedPower: number;
            exponent: number;
            exponentAssumed: boolean;
            coefficient: number;
            flowTerms: number[];
            flowScale?: number;
            flowCentre?: number;
            flowRange?: components["schemas"]["CurvesPowerFitFlowRange"];
            standbyPower: number;
            r2?: number;
            standardError?: number;
        };
        SystemCurveTablePoint: {
            flow: number;
            head: number;
            outlets: components["schemas"]["SystemCurveTablePointOutlet"][];
        };
        DutyOutlet: {
            name: string;
            flow: number;
            requiredFlow: number | null;
            margin: number | null;
            velocity: number | null;
            reach: components["schemas"]["OutletReach"] | null;
        };
        OnePumpStopped: {
            checkValves: boolean;
            requiredFlowsMet: boolean;
            flow: number;
            backflow: number;
            power: number;
            outlets: components["schemas"]["OutletOnePumpStopped"][];
        };
        PowerLaws: {
            power: components["schemas"]["PowerLawsPower"];
            annualEnergy: components["schemas"]["PowerLawsAnnualEnergy"];
        };
        ConditionEntriesDifference: {
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outlet?: string;
            residual: number;
            interval: components["schemas"]["ConditionEntriesDifferenceInterval"];
        };
        EvidenceFlow: {
            measure: "flow" | "outletFlow";
            outlet?: string;
            predicted: number;
            baselineValue?: number;
            measured: number;
            change?: number;
            standardError?: number;
            serialCorrelation: number;
            trendPerYear?: number;
            interval?: components["schemas"]["EvidenceFlowInterval"];
            readingCount: number;
        };
        EvidencePower: {
            measure: "power";
            outlet?: string;
            predicted: number;
            baselineValue?: number;
            measured: number;
            change?: number;
            standardError?: number;
            serialCorrelation: number;
            trendPerYear?: number;
            interval?: components["schemas"]["EvidenceFlowInterval"];
            readingCount: number;
        };
        EvidenceHead: {
            measure: "head";
            outlet?: string;
            predicted: number;
            baselineValue?: number;
            measured: number;
            change?: number;
            standardError?: number;
            serialCorrelation: number;
            trendPerYear?: number;
            interval?: components["schemas"]["EvidenceFlowInterval"];
            readingCount: number;
        };
        EvidenceSuctionPressure: {
            measure: "suctionPressure" | "dischargePressure";
            outlet?: string;
            predicted: number;
            baselineValue?: number;
            measured: number;
            change?: number;
            standardError?: number;
            serialCorrelation: number;
            trendPerYear?: number;
            interval?: components["schemas"]["EvidenceFlowInterval"];
            readingCount: number;
        };
        NextReadingFlow: {
            measure: "flow" | "outletFlow";
            outlet?: string;
            setting: number;
            valveClosed?: boolean;
            expected: components["schemas"]["NextReadingFlowExpected"][];
        };
        NextReadingPower: {
            measure: "power";
            outlet?: string;
            setting: number;
            valveClosed?: boolean;
            expected: components["schemas"]["NextReadingPowerExpected"][];
        };
        NextReadingHead: {
            measure: "head";
            outlet?: string;
            setting: number;
            valveClosed?: boolean;
            expected: components["schemas"]["NextReadingHeadExpected"][];
        };
        NextReadingSuctionPressure: {
            measure: "suctionPressure" | "dischargePressure";
            outlet?: string;
            setting: number;
            valveClosed?: boolean;
            expected: components["schemas"]["NextReadingSuctionPressureExpected"][];
        };
        CalibrationParameter: {
            name: "friction" | "head" | "power" | "frictionOverHead";
            value: number;
            standardError: number;
            interval: components["schemas"]["CalibrationParameterInterval"];
        };
        MarginUncertainty: {
            standardError: number;
            interval?: components["schemas"]["MarginInterval"];
        };
        MeasuredSpeedMap: {
            points: components["schemas"]["MeasuredSpeedMapPoint"][];
            differs: boolean;
        };
        AssuranceEffectWorstCase: {
            flow: number;
            head: number;
            power: number;
            outlets: components["schemas"]["AssuranceEffectWorstCaseOutlet"][];
        };
        WithoutScreenLimit: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            setting: number;
            flow: number;
            power: number;
            annualCost: number | null;
            meanVelocity: number;
            peakVelocity: number;
            screen: components["schemas"]["WithoutScreenLimitScreen"] | null;
        };
        Assumptions: {
            price: number | null;
            tariff: components["schemas"]["AssumptionsTariff"] | null;
            currency: string;
            hoursPerDay: number;
            balancing: "as-built" | "trimmed";
            objective: "energy-cost" | "life-cycle-cost";
            lifeCycle: components["schemas"]["AssumptionsLifeCycle"] | null;
            assurance: components["schemas"]["AssuranceByGrade"] | components["schemas"]["AssuranceByMargin"] | components["schemas"]["AssuranceByFrictionMultiplier"] | "calibration" | null;
            heat: components["schemas"]["AssumptionsHeat"] | null;
            limits: components["schemas"]["AssumptionsLimits"];
        };
        Remedy: {
            throttle: components["schemas"]["RemedyThrottle"];
            setting: number;
            flow: number;
            power: number;
            annualEnergy: number;
            annualCost: number | null;
        };
        SavingByLargerPipe: {
            name: string;
            grid: components["schemas"]["SavingOnGrid"] | null;
            continuous: components["schemas"]["SavingOffGrid"] | null;
        };
        LossSaving: {
            grid: components["schemas"]["SavingOnGrid"] | null;
            continuous: components["schemas"]["SavingOffGrid"] | null;
        };
        DesignAssumptions: {
            price: number;
            tariff: components["schemas"]["DesignAssumptionsTariff"] | null;
            currency: string;
            hoursPerDay: number;
            trimPrice: number;
            years: number;
            discountRate: number;
            inflation: number;
            energyInflation: number;
            labourRate: number;
            minutesPerFailure: number;
            limits: components["schemas"]["DesignAssumptionsLimits"];
        };
        BelowRequiredLoop: {
            loop: components["schemas"]["RecordReference"];
            outlet: string;
            flow: number;
            requiredFlow: number;
            margin: number;
            phase: string | null;
        };
        CanTurnDownLoop: {
            loop: components["schemas"]["RecordReference"];
            installedSetting: number;
            setting: number;
            annualEnergySaving: number;
            annualCostSaving: number | null;
        };
        FittingDefinition: {
            name: string;
            kind: "fitting" | "valve";
            method: string;
            preferred: boolean;
            value: number | null;
            laminarValue: number | null;
            sizeValue: number | null;
            angle: number | null;
            partOpenings: components["schemas"]["FittingDefinitionPartOpening"][];
            description: string;
            source: string;
            partOpeningSource: string | null;
            verified: boolean;
        };
        AppliedParameter: {
            name: "friction" | "head" | "power" | "frictionOverHead";
            value: number;
            standardError: number;
            interval: components["schemas"]["AppliedParameterInterval"];
        };
        DutyUncertainty: {
            grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
            flow: components["schemas"]["FlowInterval"];
            power: components["schemas"]["PowerInterval"];
            annualEnergy: components["schemas"]["AnnualEnergyInterval"];
            laws: components["schemas"]["PowerLaws"];
            margin?: components["schemas"]["DutyUncertaintyMargin"];
        };
        ConditionEntries: {
            verdict: "agree" | "differ" | "not-determined";
            differences: components["schemas"]["ConditionEntriesDifference"][];
            slip?: "gallons-and-litres" | "hours-and-minutes" | "cubic-metres-per-hour-and-litres-per-minute" | "watts-and-kilowatts" | "feet-and-metres" | "psi-and-kilopascals" | "kilopascals-and-metres";
        };
        CalibrationSmallestMargin: {
            outlet?: string;
            setting: number;
            margin?: number;
            uncertainty?: components["schemas"]["MarginUncertainty"];
        };
        CalibrationNextReadingFlow: {
            measure: "flow" | "outletFlow";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            predicted: number;
            remainingUncertainty?: components["schemas"]["MarginUncertainty"];
            expectedParameters: components["schemas"]["CalibrationParameter"][];
        };
        CalibrationNextReadingHead: {
            measure: "head";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            predicted: number;
            remainingUncertainty?: components["schemas"]["MarginUncertainty"];
            expectedParameters: components["schemas"]["CalibrationParameter"][];
        };
        CalibrationNextReadingPower: {
            measure: "power";
            setting: number;
            outlet?: string;
            closedOutlets?: string[];
            valveClosed?: boolean;
            predicted: number;
            remainingUncertainty?: components["schemas"]["MarginUncertainty"];
            expectedParameters: components["schemas"]["CalibrationParameter"][];
        };
        CalibrationInHistory: {
            sequence: number;
            appliedAt: string;
            undoneAt: string | null;
            inUse: boolean;
            factors: components["schemas"]["CalibrationInHistoryFactors"];
            parameters: components["schemas"]["CalibrationParameter"][];
            from: string;
            to: string;
            readingCount: number;
        };
        AssuranceEffect: {
            withoutAssurance: components["schemas"]["AssuranceEffectWithoutAssurance"] | null;
            annualExtraEnergy: number | null;
            annualExtraCost: number | null;
            worstCase: components["schemas"]["AssuranceEffectWorstCase"] | null;
        };
        LossSavings: {
            largerPipe: components["schemas"]["SavingByLargerPipe"] | null;
            halved: components["schemas"]["LossSaving"] | null;
            removed: components["schemas"]["LossSaving"] | null;
        };
        CalibrationResult: {
            parameters: components["schemas"]["AppliedParameter"][];
            factors: components["schemas"]["AppliedFactors"];
            covariance?: number[][];
            worstCase: components["schemas"]["CalibrationResultWorstCase"];
            pump: components["schemas"]["CalibrationResultPump"];
            from: string;
            to: string;
            readingCount: number;
            modelVersion: string;
        };
        Loss: {
            pointer: string;
            kind: "intake" | "pipe" | "fitting" | "valve" | "loss" | "bore-change" | "tee-mouth" | "trim" | "outlet" | "lift" | "system-curve";
            name: string | null;
            bore: number | null;
            flow: number;
            head: number;
            power: number;
            powerShare: number;
            annualEnergy: number;
            annualCost: number | null;
            savings: components["schemas"]["LossSavings"] | null;
        };
    };
    responses: {
        Problem400: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem403: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem408: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem414: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem431: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem422: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem500: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem503: {
            headers: {
                "Retry-After"?: number;
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem406: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem404: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem413: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem415: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem412: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem428: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem507: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        Problem409: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
type $defs = Record<string, never>;
interface operations {
    getSite: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replaceSite: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Site"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    listPumps: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PumpList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createPump: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PumpRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getPump: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replacePump: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
                "If-None-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PumpRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deletePump: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    importPumps: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "text/csv": string;
            };
        };
        responses: {
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PumpList"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    replaceHeadPoints: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "text/csv": string;
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    replacePowerPoints: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "text/csv": string;
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getPumpCurves: {
        parameters: {
            query?: {
                setting?: number;
                points?: number;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Curves"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listLoops: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LoopList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createLoop: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LoopRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Loop"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getLoop: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Loop"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replaceLoop: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LoopRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Loop"];
                };
            };
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Loop"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteLoop: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getSystemCurve: {
        parameters: {
            query?: {
                flow?: number | string;
                points?: number;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SystemCurveTable"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getDutyPoint: {
        parameters: {
            query?: {
                pump?: string;
                setting?: number;
                reachVelocity?: number | string;
                count?: number;
                price?: number;
                hoursPerDay?: number;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DutyPoint"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listTariffs: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TariffList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createTariff: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TariffRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Tariff"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getTariff: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                tariffId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Tariff"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replaceTariff: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
                "If-None-Match"?: string;
            };
            path: {
                tariffId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TariffRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Tariff"];
                };
            };
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Tariff"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteTariff: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                tariffId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getSchedule: {
        parameters: {
            query?: {
                year?: number;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schedule"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replaceSchedule: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: {
                "If-Match"?: string;
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScheduleRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schedule"];
                    "text/csv": string;
                };
            };
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schedule"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteSchedule: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getSetpoint: {
        parameters: {
            query?: {
                at?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Setpoint"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listSetpoints: {
        parameters: {
            query?: {
                at?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Setpoints"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getPumpChart: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getLoopChart: {
        parameters: {
            query?: {
                pump?: string;
                setting?: number;
                count?: number;
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getScheduleChart: {
        parameters: {
            query?: {
                day?: string;
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getConditionChart: {
        parameters: {
            query?: {
                from?: string;
                to?: string;
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getComparisonChart: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getComparisonReport: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getLoopReport: {
        parameters: {
            query?: {
                pump?: string;
                count?: number;
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listReadings: {
        parameters: {
            query?: {
                from?: string;
                to?: string;
                groupBy?: "hour" | "day";
                limit?: number;
                cursor?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    addReadings: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadingsRequest"];
                "text/csv": string;
            };
        };
        responses: {
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingsAccepted"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteReadings: {
        parameters: {
            query: {
                from: string;
                to: string;
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getCondition: {
        parameters: {
            query?: {
                from?: string;
                to?: string;
                price?: number;
                cleaningCost?: number;
                include?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Condition"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createBaseline: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BaselineRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Baseline"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteBaseline: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    listCalibrations: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Calibrations"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    computeCalibration: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CalibrationRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Calibration"];
                };
            };
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Calibration"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteCalibration: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeRecommendation: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecommendationRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Recommendation"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getRecommendation: {
        parameters: {
            query?: {
                pump?: string;
                count?: number;
                price?: number;
                hoursPerDay?: number;
                tariff?: string;
                balancing?: "as-built" | "trimmed";
                objective?: "energy-cost" | "life-cycle-cost";
                rankingLimit?: number;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Recommendation"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    computeDesign: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Design"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeDesignChart: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/svg+xml": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeDesignReport: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DesignRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeScreenSize: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScreenSizeRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScreenSize"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeLeakExposure: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LeakExposureRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LeakExposure"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    listComparisons: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ComparisonList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createComparison: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ComparisonRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Comparison"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getComparison: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Comparison"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    deleteComparison: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeBillOfMaterials: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BillOfMaterialsRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BillOfMaterials"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    computeSpares: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SparesRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Spares"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    listUpgradePlans: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UpgradePlanList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createUpgradePlan: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["UpgradePlanRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UpgradePlan"];
                    "text/csv": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getUpgradePlan: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path: {
                upgradePlanId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UpgradePlan"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    deleteUpgradePlan: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                upgradePlanId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getSummary: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteSummary"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listMaintenanceTasks: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                name?: string;
                loop?: string;
                pump?: string;
                kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
                due?: boolean;
                overdue?: boolean;
                dueBy?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTaskList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createMaintenanceTask: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MaintenanceTaskRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTask"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getMaintenanceTask: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: never;
            path: {
                maintenanceTaskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTask"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    replaceMaintenanceTask: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: {
                "If-Match"?: string;
                "If-None-Match"?: string;
            };
            path: {
                maintenanceTaskId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MaintenanceTaskRequest"];
            };
        };
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTask"];
                };
            };
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTask"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            412: components["responses"]["Problem412"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    deleteMaintenanceTask: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                maintenanceTaskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    listCompletions: {
        parameters: {
            query?: {
                limit?: number;
                cursor?: string;
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: never;
            path: {
                maintenanceTaskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompletionList"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    createCompletion: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                maintenanceTaskId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CompletionRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    ETag?: string;
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Completion"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getCompletion: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: never;
            path: {
                maintenanceTaskId: string;
                completionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Completion"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    deleteCompletion: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                maintenanceTaskId: string;
                completionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            408: components["responses"]["Problem408"];
            412: components["responses"]["Problem412"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            428: components["responses"]["Problem428"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    createStarterTasks: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                loopId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["StarterTasksRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StarterTasks"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getMaintenanceCalendar: {
        parameters: {
            query?: {
                loop?: string;
                pump?: string;
                units?: "metric" | "us";
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "text/calendar": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listPipes: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PipeTable"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listFittings: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FittingTable"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getWaterProperties: {
        parameters: {
            query?: {
                temperature?: number | string;
                salinity?: number | string;
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WaterProperties"];
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    listCautions: {
        parameters: {
            query?: {
                units?: "metric" | "us";
                format?: "json" | "csv";
                pointer?: string;
            };
            header?: {
                "If-None-Match"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CautionTable"];
                    "text/csv": string;
                    "text/plain": string;
                };
            };
            304: {
                headers: {
                    ETag?: string;
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    exportSite: {
        parameters: {
            query?: {
                exclude?: string;
                units?: "metric" | "us";
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteExport"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    importSite: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SiteExportRequest"];
            };
        };
        responses: {
            201: {
                headers: {
                    Location?: string;
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportResult"];
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            409: components["responses"]["Problem409"];
            413: components["responses"]["Problem413"];
            414: components["responses"]["Problem414"];
            415: components["responses"]["Problem415"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
            507: components["responses"]["Problem507"];
        };
    };
    getHealth: {
        parameters: {
            query?: {
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProbeStatus"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getReadiness: {
        parameters: {
            query?: {
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProbeStatus"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
    getOpenApiDocument: {
        parameters: {
            query?: {
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpenApiDocument"];
                    "text/plain": string;
                };
            };
            400: components["responses"]["Problem400"];
            403: components["responses"]["Problem403"];
            404: components["responses"]["Problem404"];
            406: components["responses"]["Problem406"];
            408: components["responses"]["Problem408"];
            414: components["responses"]["Problem414"];
            422: components["responses"]["Problem422"];
            431: components["responses"]["Problem431"];
            500: components["responses"]["Problem500"];
            503: components["responses"]["Problem503"];
        };
    };
}
