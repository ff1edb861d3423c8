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
        put: operations["putSchedule"];
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
        get: operations["getSetpoints"];
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
    "/v1/loops/{loopId}/day.svg": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getDayChart"];
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
        post: operations["takeReadings"];
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
    "/v1/loops/{loopId}/calibration": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["getCalibrations"];
        put?: never;
        post: operations["calibrateLoop"];
        delete: operations["undoCalibration"];
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
        post: operations["recommend"];
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
        post: operations["sizeScreen"];
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
        post: operations["exposeLeak"];
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
        post: operations["listMaterials"];
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
        post: operations["countSpares"];
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
    "/v1/upgrade-plans/{planId}": {
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
    "/v1/maintenance-tasks/{taskId}": {
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
    "/v1/maintenance-tasks/{taskId}/completions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get: operations["listCompletions"];
        put?: never;
        post: operations["completeMaintenanceTask"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/v1/maintenance-tasks/{taskId}/completions/{completionId}": {
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
    "/v1/maintenance.ics": {
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
        get: operations["getPipes"];
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
        get: operations["getFittings"];
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
        get: operations["getWater"];
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
        get: operations["getCautions"];
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
        get: operations["getSpecification"];
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
            code: string;
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
            units: {
                [key: string]: string;
            };
        };
        SiteInput: {
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
            units: {
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
        PumpInput: {
            name: string;
            ratedSpeed?: number;
            headPoints: components["schemas"]["HeadPointInput"][];
            powerPoints: components["schemas"]["PowerPointInput"][];
            settings?: components["schemas"]["SettingsInput"];
            speedMap?: components["schemas"]["SpeedPointInput"][];
            npshPoints?: components["schemas"]["NpshPointInput"][];
            standbyPower?: number | string;
            ratedPower?: number | string;
            flowLimits?: components["schemas"]["FlowLimitsInput"];
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            mounting?: "dry" | "submerged";
            motorEfficiency?: number;
            price?: number;
            expectedLifeYears?: number;
            failures?: components["schemas"]["FailuresInput"];
            service?: components["schemas"]["ServiceInput"];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
        };
        HeadPointInput: {
            flow: number | string;
            head: number | string;
            setting?: number | string;
        };
        PowerPointInput: {
            setting: number | string;
            power: number | string;
            flow?: number | string;
        };
        SettingsInput: {
            min?: number | string;
            max?: number | string;
            step?: number | string;
        };
        SpeedPointInput: {
            setting: number | string;
            speed: number | string;
        };
        NpshPointInput: {
            flow: number | string;
            head: number | string;
        };
        FlowLimitsInput: {
            min?: number | string;
            max?: number | string;
        };
        FailuresInput: {
            count: number;
            devices: number;
            years: number;
        };
        ServiceInput: {
            everyMonths: number;
            minutes: number;
            parts: number;
        };
        PumpList: {
            items: components["schemas"]["PumpItem"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        PumpItem: {
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
        };
        Curves: {
            headFit: {
                shape: "sum-of-powers" | "piecewise" | "assumed";
                exponents?: number[];
                coefficients?: number[];
                knots?: {
                    flow: number;
                    head: number;
                    slope: number;
                }[];
                flowScale: number;
                range: {
                    min: number;
                    max: number;
                };
                r2?: number;
                standardError?: number;
                residuals: number[];
                leaveOneOut?: number;
            };
            powerFit: {
                law: "exponent" | "fixed-loss";
                fixedPower: number;
                exponent: number;
                exponentAssumed: boolean;
                coefficient: number;
                flowTerms: number[];
                flowScale?: number;
                flowCentre?: number;
                flowRange?: {
                    min: number;
                    max: number;
                };
                standbyPower: number;
                r2?: number;
                standardError?: number;
            };
            bestEfficiencyPoint: {
                flow: number;
                head: number;
                efficiency: number;
            } | null;
            table: {
                setting: number;
                flow: number;
                head: number;
                power: number;
                efficiency: number;
            }[];
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Basis: {
            modelVersion: string;
            loop: {
                id: string | null;
                version: number | null;
            } | null;
            pumps: {
                id: string | null;
                version: number | null;
            }[];
        };
        Loop: components["schemas"]["SystemCurveLoop"] | components["schemas"]["PipeworkLoop"];
        SystemCurveLoop: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            cautions?: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
            name: string;
            water: components["schemas"]["Water"];
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            siphonBreakDepth?: number;
            overflowCapacity?: number;
            gauges?: components["schemas"]["Gauges"];
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            systemCurve: components["schemas"]["SystemCurve"];
            outlets: components["schemas"]["ShareOutlet"][];
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
            cautions?: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
            name: string;
            water: components["schemas"]["Water"];
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            siphonBreakDepth?: number;
            overflowCapacity?: number;
            gauges?: components["schemas"]["Gauges"];
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            staticHead: number;
            boreChanges?: "abrupt" | "ignored";
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
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
            count?: number;
            diameter?: number;
        };
        Valve: {
            valve: string | components["schemas"]["ValveByKv"] | components["schemas"]["ValveByCv"];
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
        LoopInput: components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
        SystemCurveLoopInput: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterInput"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankInput"];
            intake?: components["schemas"]["IntakeInput"];
            basin?: components["schemas"]["BasinInput"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesInput"];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpInput"];
            limits?: components["schemas"]["LimitsInput"];
            systemCurve: components["schemas"]["SystemCurveInput"];
            outlets: components["schemas"]["ShareOutletInput"][];
        };
        WaterInput: {
            temperature?: number | string;
            salinity?: number | string;
        };
        TankInput: {
            volume?: number | string;
            area?: number | string;
            width?: number | string;
            depth?: number | string;
        };
        IntakeInput: {
            lossCoefficient?: number;
            depth?: number | string;
            screen?: components["schemas"]["IntakeScreenInput"];
            smallestAnimal?: number | string;
            reachable?: boolean;
        };
        IntakeScreenInput: components["schemas"]["CylinderScreenInput"] | components["schemas"]["FlatScreenInput"] | components["schemas"]["BoxScreenInput"];
        CylinderScreenInput: {
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
        FlatScreenInput: {
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
        BoxScreenInput: {
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
        BasinInput: {
            area: number | string;
            freeboard: number | string;
        };
        GaugesInput: {
            suctionDiameter: number | string;
            dischargeDiameter: number | string;
        };
        InstalledPumpInput: {
            pump: string;
            count?: number;
            setting: number | string;
            checkValves?: boolean;
            since?: string;
        };
        LimitsInput: {
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
        SystemCurveInput: {
            staticHead?: number | string;
            points: components["schemas"]["SystemPointInput"][];
        };
        SystemPointInput: {
            flow: number | string;
            head: number | string;
        };
        ShareOutletInput: {
            name: string;
            share: number;
            requiredFlow?: number | string;
            maximumFlow?: number | string;
        };
        PipeworkLoopInput: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterInput"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankInput"];
            intake?: components["schemas"]["IntakeInput"];
            basin?: components["schemas"]["BasinInput"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesInput"];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpInput"];
            limits?: components["schemas"]["LimitsInput"];
            staticHead?: number | string;
            boreChanges?: "abrupt" | "ignored";
            suction?: components["schemas"]["RunElementInput"][];
            discharge: components["schemas"]["BranchInput"];
        };
        RunElementInput: components["schemas"]["PipeInput"] | components["schemas"]["FittingInput"] | components["schemas"]["ValveInput"] | components["schemas"]["LossByCoefficientInput"] | components["schemas"]["LossByLengthInput"] | components["schemas"]["LossByPointInput"];
        PipeInput: {
            pipe: string | components["schemas"]["PipeBoreInput"];
            length: number | string;
        };
        PipeBoreInput: {
            insideDiameter: number | string;
            roughness?: number | string;
        };
        FittingInput: {
            fitting: string;
            count?: number;
            diameter?: number | string;
        };
        ValveInput: {
            valve: string | components["schemas"]["ValveByKvInput"] | components["schemas"]["ValveByCvInput"];
            opening?: number | string;
            diameter?: number | string;
        };
        ValveByKvInput: {
            kv: number;
        };
        ValveByCvInput: {
            cv: number;
        };
        LossByCoefficientInput: {
            lossCoefficient: number;
            diameter?: number | string;
            boreChange?: boolean;
        };
        LossByLengthInput: {
            equivalentLength: number | string;
            diameter?: number | string;
            roughness?: number | string;
        };
        LossByPointInput: {
            loss: components["schemas"]["LossPointInput"];
            boreChange?: boolean;
        };
        LossPointInput: {
            head: number | string;
            flow: number | string;
        };
        BranchInput: {
            run: components["schemas"]["RunElementInput"][];
            outlet?: components["schemas"]["OutletInput"];
            branches?: components["schemas"]["BranchInput"][];
            split?: "tee-90";
            highestElevation?: number | string;
        };
        OutletInput: {
            name: string;
            requiredFlow?: number | string;
            maximumFlow?: number | string;
            reach?: components["schemas"]["ReachInput"];
            nozzleDiameter?: number | string;
            nozzleCount?: number;
            lossCoefficient?: number;
            staticHead?: number | string;
            exit?: "submerged" | "free";
        };
        ReachInput: {
            distance: number | string;
            velocity: number | string;
        };
        LoopList: {
            items: components["schemas"]["LoopItem"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        LoopItem: components["schemas"]["SystemCurveLoopItem"] | components["schemas"]["PipeworkLoopItem"];
        SystemCurveLoopItem: {
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
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            systemCurve: components["schemas"]["SystemCurve"];
            outlets: components["schemas"]["ShareOutlet"][];
        };
        PipeworkLoopItem: {
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
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            limits?: components["schemas"]["Limits"];
            staticHead: number;
            boreChanges?: "abrupt" | "ignored";
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
        };
        SystemCurveTable: {
            points: {
                flow: number;
                head: number;
                outlets: {
                    name: string;
                    flow: number;
                }[];
            }[];
            requiredDuty: {
                flow: number;
                head: number;
                limitingOutlet: string;
            } | null;
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
            outlets: {
                name: string;
                flow: number;
                requiredFlow: number | null;
                margin: number | null;
                velocity: number | null;
                reach: {
                    velocity: number;
                    distance: number;
                } | null;
            }[];
            trims: {
                branch: string;
                outlets: string[];
                closed: boolean;
                flow: number;
                head: number | null;
                lossCoefficient: number | null;
                diameter: number | null;
                kv: number | null;
                valve: string | null;
                opening: number | null;
            }[];
            perPump: {
                flow: number;
                power: number;
            };
            onePumpDown: {
                checkValves: boolean;
                served: boolean;
                flow: number;
                backflow: number;
                power: number;
                outlets: {
                    name: string;
                    flow: number;
                    requiredFlow: number | null;
                    margin: number | null;
                }[];
            } | null;
            uncertainty: {
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    low: number;
                    high: number;
                };
                power: {
                    low: number;
                    high: number;
                };
                annualEnergy: {
                    low: number;
                    high: number;
                };
                laws: {
                    power: {
                        low: number;
                        high: number;
                    };
                    annualEnergy: {
                        low: number;
                        high: number;
                    };
                };
            };
            npsh: {
                available: number;
                required?: number;
                ratio?: number;
            };
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: {
                meanVelocity: number;
                peakVelocity: number;
                cloggedFraction: number;
            } | null;
            heat: {
                power: number;
                motorEfficiencyAssumed: boolean;
                dailyRise: number | null;
                annualEnergy: number | null;
                annualCost: number | null;
            };
            coveredIntake: {
                suctionHead: number;
                force: number;
            } | null;
            cautions: components["schemas"]["Caution"][];
            intersections: {
                flow: number;
                head: number;
                stable: boolean;
            }[];
            drainBack: {
                volume: number;
                room: number | null;
                floods: boolean | null;
                deepestSiphonBreak: number | null;
            } | null;
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
            otherwise: components["schemas"]["TariffRest"];
            standingChargePerDay: number;
            units: {
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
        TariffRest: {
            name: string;
            price: number;
        };
        TariffInput: {
            name: string;
            holidays?: string[];
            periods?: components["schemas"]["TariffPeriodInput"][];
            otherwise: components["schemas"]["TariffRestInput"];
            standingChargePerDay?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            key?: string;
        };
        TariffPeriodInput: {
            name: string;
            price: number;
            months?: number[];
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            from?: string;
            to?: string;
        };
        TariffRestInput: {
            name: string;
            price: number;
        };
        TariffList: {
            items: components["schemas"]["TariffItem"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        TariffItem: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            name: string;
            holidays: string[];
            periods: components["schemas"]["TariffPeriod"][];
            otherwise: components["schemas"]["TariffRest"];
            standingChargePerDay: number;
        };
        Schedule: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            tariff: string | null;
            phases: components["schemas"]["ScheduledPhase"][];
            emergency?: components["schemas"]["EmergencyRunning"];
            year: number;
            hoursPerYear: number;
            currency: string;
            annualEnergy: number;
            annualCost: number | null;
            against: {
                constantHighest: components["schemas"]["ConstantRunning"];
                installed: components["schemas"]["ConstantRunning"];
            };
            fallback: components["schemas"]["Fallback"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        ScheduledPhase: {
            name: string;
            from: string;
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            factor?: number;
            requiredFlows?: {
                [key: string]: number;
            };
            volume?: components["schemas"]["VolumeDemand"];
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
            outlets: components["schemas"]["ServedOutlet"][];
            otherSetting: number | null;
            gap: number | null;
        };
        VolumeDemand: {
            perDay: number;
            floor?: number;
            ceiling?: number;
            mayStop: boolean;
            splits: boolean;
        };
        Pulse: {
            otherFactor: number;
            periodMinutes: number;
            share: number;
        };
        ServedOutlet: {
            name: string;
            flow: number;
            requiredFlow: number | null;
            margin: number | null;
            velocity: number | null;
            shortage?: number;
        };
        EmergencyRunning: {
            factor: number;
            batteryEnergy?: number;
            setting: number;
            feasible: boolean;
            reason?: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            step?: number;
            limitedBy?: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh")[];
            power: number;
            flow: number;
            outlets: components["schemas"]["ServedOutlet"][];
            batteryHours: number | null;
        };
        ConstantRunning: {
            setting: number;
            power: number;
            flow: number;
            annualEnergy: number;
            annualCost: number | null;
            savedEnergy: number;
            savedCost: number | null;
        };
        Fallback: {
            setting: number;
            requiredFlowsMet: boolean;
            phasesBelowRequired: string[];
        };
        ScheduleInput: {
            tariff?: string | null;
            phases: components["schemas"]["PhaseInput"][];
            emergency?: components["schemas"]["EmergencyInput"];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
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
        PhaseInput: {
            name: string;
            from: string;
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            factor?: number;
            requiredFlows?: {
                [key: string]: number | string;
            };
            volume?: components["schemas"]["VolumeDemandInput"];
            openings?: {
                [key: string]: number | string;
            };
            rampMinutes?: number;
            pulse?: components["schemas"]["PulseInput"];
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
            gap?: unknown;
        };
        VolumeDemandInput: {
            perDay: number | string;
            floor?: number | string;
            ceiling?: number | string;
            mayStop?: boolean;
            splits?: boolean;
        };
        PulseInput: {
            otherFactor: number;
            periodMinutes: number;
            share: number;
        };
        EmergencyInput: {
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
            until: string;
            power: number;
            flow: number;
            outlets: components["schemas"]["ServedOutlet"][];
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
            until: string;
            power: number;
            flow: number;
        };
        ReadingsTaken: {
            accepted: number;
            merged: number;
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        ReadingsInput: {
            readings: components["schemas"]["ReadingInput"][];
        };
        ReadingInput: {
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
            until: string;
            day: string | null;
            readings: number;
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
            verdict: "not-enough-readings" | "meter-doubtful" | "pump-stopped" | "draws-more-than-its-curve" | "clogged-intake" | "clogged-discharge" | "worn-pump" | "clogged-branch" | "clogged" | "less-flow" | "entries-doubtful" | "as-expected";
            summary: string;
            evidence: components["schemas"]["Evidence"][];
            meterSlip: components["schemas"]["MeterSlip"] | null;
            places: string[];
            pumpsRunning: number | null;
            also: ("not-enough-readings" | "meter-doubtful" | "pump-stopped" | "draws-more-than-its-curve" | "clogged-intake" | "clogged-discharge" | "worn-pump" | "clogged-branch" | "clogged" | "less-flow" | "entries-doubtful" | "as-expected") | null;
            shortfall: components["schemas"]["Shortfall"] | null;
            waiting: components["schemas"]["Waiting"] | null;
            dataBasis: "entered" | "calibrated";
            cleanings: string[];
            from: string | null;
            to: string | null;
            readings: {
                total: number;
                judged: number;
                used: number;
                leftOut: {
                    stopped: number;
                    shutValve: number;
                    otherSetting: number;
                };
            };
            thresholds: {
                flowDown: number;
                outletDown: number;
                flowUp: number;
                flowWorn: number;
                powerDown: number;
                powerUp: number;
                powerFarDown: number;
                suctionGap: number;
                dischargeGap: number;
                pumpGap: number;
                headOff: number;
                pressureOff: number;
                stoppedFlow: number;
                stoppedPower: number;
            };
            series: components["schemas"]["ResidualSeries"][];
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        Evidence: {
            measure: "flow" | "outletFlow";
            outlet: string | null;
            predicted: number;
            measured: number;
            residual: number;
            since: string;
            standardError: number;
            trendPerYear: number | null;
            interval: {
                low: number;
                high: number;
            } | null;
            readings: number;
        } | {
            measure: "power";
            outlet: string | null;
            predicted: number;
            measured: number;
            residual: number;
            since: string;
            standardError: number;
            trendPerYear: number | null;
            interval: {
                low: number;
                high: number;
            } | null;
            readings: number;
        } | {
            measure: "head";
            outlet: string | null;
            predicted: number;
            measured: number;
            residual: number;
            since: string;
            standardError: number;
            trendPerYear: number | null;
            interval: {
                low: number;
                high: number;
            } | null;
            readings: number;
        } | {
            measure: "suctionPressure" | "dischargePressure";
            outlet: string | null;
            predicted: number;
            measured: number;
            residual: number;
            since: string;
            standardError: number;
            trendPerYear: number | null;
            interval: {
                low: number;
                high: number;
            } | null;
            readings: number;
        };
        MeterSlip: {
            meter: "flow" | "power" | "head";
            likely: ("gallons-and-litres" | "hours-and-minutes" | "watts-and-kilowatts" | "apparent-power" | "feet-and-metres" | "kilopascals-and-metres" | "psi-and-kilopascals" | "psi-and-metres") | null;
            factor: number | null;
        };
        Shortfall: {
            outlet: string;
            date: string;
            interval: {
                earliest: string;
                latest: string | null;
            };
        };
        Waiting: {
            currency: string;
            residuals: {
                flow: number;
                power: number;
            };
            excessCost: number;
            growthPerYear: number;
            costOfAYear: number;
            cleaning: components["schemas"]["CheapestCleaning"] | null;
        };
        CheapestCleaning: {
            remedy: "cleaning" | "service";
            cost: number;
            source: "asked" | "maintenance-task" | "pump-service";
            everyDays: number;
            annualCost: number;
            endsAtShortfall: boolean;
        };
        ResidualSeries: {
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            outlet: string | null;
            points: {
                time: string;
                residual: number;
                readings: number;
            }[];
            line: {
                from: {
                    time: string;
                    residual: number;
                };
                to: {
                    time: string;
                    residual: number;
                };
            } | null;
        };
        Calibration: {
            parameters: {
                name: "friction" | "head" | "power" | "frictionOverHead";
                value: number;
                standardError: number;
                interval: {
                    low: number;
                    high: number;
                };
            }[];
            notIdentifiable: {
                name: "friction" | "head" | "power";
                reason: "no-power-readings" | "no-flow-readings" | "ratio-alone" | "not-distinct" | "implausible" | "ill-conditioned" | "too-uncertain";
                detail: string;
                conditionNumber: number | null;
                standardError: number | null;
                readings: string[];
            }[];
            misfits: {
                measure: "flow" | "outletFlow" | "head" | "power";
                setting: number;
                outlet: string | null;
                shut: string[];
                zeroFlow: boolean;
                measured: {
                    flow: number | null;
                    head: number | null;
                    power: number | null;
                };
                predicted: {
                    flow: number | null;
                    head: number | null;
                    power: number | null;
                };
                off: number;
            }[];
            limiting: {
                outlet: string | null;
                setting: number;
                margin: number | null;
                doubt: {
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    } | null;
                } | null;
            } | null;
            nextReadings: {
                measure: "flow" | "outletFlow" | "head" | "power";
                setting: number;
                outlet: string | null;
                shut: string[];
                zeroFlow: boolean;
                predicted: {
                    flow: number | null;
                    head: number | null;
                    power: number | null;
                };
                margin: {
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    } | null;
                } | null;
                parameters: {
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    value: number;
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    };
                }[];
            }[];
            speedMap: {
                points: {
                    setting: number;
                    speed: number;
                    standardError: number | null;
                }[];
                differs: boolean;
            } | null;
            readings: {
                used: number;
                rows: number;
                from: string | null;
                to: string;
            };
            applied: boolean;
            dataBasis: "entered" | "calibrated";
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        CalibrationRequestInput: {
            from?: string;
            to?: string;
            apply?: boolean;
        };
        Calibrations: {
            dataBasis: "entered" | "calibrated";
            items: {
                place: number;
                appliedAt: string;
                undoneAt: string | null;
                inUse: boolean;
                factors: {
                    friction: number;
                    head: number;
                    power: number;
                };
                parameters: {
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    value: number;
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    };
                }[];
                from: string;
                to: string;
                readings: number;
            }[];
        };
        Recommendation: {
            best: components["schemas"]["Best"] | null;
            ranking: components["schemas"]["Duty"][];
            rejected: components["schemas"]["RejectedCandidate"][];
            counts: {
                candidates: number;
                feasible: number;
                rejected: number;
            };
            requiredDuty: {
                flow: number;
                head: number;
                limitingOutlet: string;
            } | null;
            againstAsBuilt: {
                candidate: number;
                pump: components["schemas"]["PumpReference"];
                count: number;
                setting: number;
                annualEnergy: number;
                annualCost: number | null;
                energySaving: number;
                costSaving: number | null;
            } | null;
            assurance: {
                without: {
                    candidate: number;
                    pump: components["schemas"]["PumpReference"];
                    count: number;
                    setting: number;
                    annualEnergy: number;
                    annualCost: number | null;
                } | null;
                extraEnergy: number | null;
                extraCost: number | null;
                badEnd: {
                    flow: number;
                    head: number;
                    power: number;
                    outlets: {
                        name: string;
                        flow: number;
                        requiredFlow: number | null;
                    }[];
                } | null;
            } | null;
            losses: components["schemas"]["Losses"] | null;
            withoutScreenLimit: {
                candidate: number;
                pump: components["schemas"]["PumpReference"];
                count: number;
                setting: number;
                flow: number;
                power: number;
                annualCost: number | null;
                meanVelocity: number;
                peakVelocity: number;
                screen: {
                    length: number;
                    count: number;
                } | null;
            } | null;
            drainBack: {
                volume: number;
                room: number | null;
                floods: boolean | null;
                deepestSiphonBreak: number | null;
            } | null;
            assumptions: {
                price: number | null;
                tariff: {
                    id: string | null;
                    key?: string;
                    name: string;
                    year: number;
                } | null;
                currency: string;
                hoursPerDay: number;
                balancing: "as-built" | "trimmed";
                objective: "energy-cost" | "life-cycle-cost";
                lifeCycle: {
                    years: number;
                    discountRate: number;
                    inflation: number;
                    energyInflation: number;
                    labourRate: number;
                    minutesPerFailure: number;
                } | null;
                assurance: {
                    grade: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
                } | {
                    margin: number;
                } | {
                    frictionMultiplier: number;
                } | "calibration" | null;
                heat: {
                    cop: number;
                    mode: "cooling" | "heating";
                    inRanking: boolean;
                } | null;
                limits: {
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
            };
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
            outlets: {
                name: string;
                flow: number;
                requiredFlow: number | null;
                margin: number | null;
                velocity: number | null;
                reach: {
                    velocity: number;
                    distance: number;
                } | null;
            }[];
            trims: {
                branch: string;
                outlets: string[];
                closed: boolean;
                flow: number;
                head: number | null;
                lossCoefficient: number | null;
                diameter: number | null;
                kv: number | null;
                valve: string | null;
                opening: number | null;
            }[];
            perPump: {
                flow: number;
                power: number;
            };
            onePumpDown: {
                checkValves: boolean;
                served: boolean;
                flow: number;
                backflow: number;
                power: number;
                outlets: {
                    name: string;
                    flow: number;
                    requiredFlow: number | null;
                    margin: number | null;
                }[];
            } | null;
            uncertainty: {
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    low: number;
                    high: number;
                };
                power: {
                    low: number;
                    high: number;
                };
                annualEnergy: {
                    low: number;
                    high: number;
                };
                laws: {
                    power: {
                        low: number;
                        high: number;
                    };
                    annualEnergy: {
                        low: number;
                        high: number;
                    };
                };
            };
            npsh: {
                available: number;
                required?: number;
                ratio?: number;
            };
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: {
                meanVelocity: number;
                peakVelocity: number;
                cloggedFraction: number;
            } | null;
            heat: {
                power: number;
                motorEfficiencyAssumed: boolean;
                dailyRise: number | null;
                annualEnergy: number | null;
                annualCost: number | null;
            };
            coveredIntake: {
                suctionHead: number;
                force: number;
            } | null;
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
            outlets: {
                name: string;
                flow: number;
                requiredFlow: number | null;
                margin: number | null;
                velocity: number | null;
                reach: {
                    velocity: number;
                    distance: number;
                } | null;
            }[];
            trims: {
                branch: string;
                outlets: string[];
                closed: boolean;
                flow: number;
                head: number | null;
                lossCoefficient: number | null;
                diameter: number | null;
                kv: number | null;
                valve: string | null;
                opening: number | null;
            }[];
            perPump: {
                flow: number;
                power: number;
            };
            onePumpDown: {
                checkValves: boolean;
                served: boolean;
                flow: number;
                backflow: number;
                power: number;
                outlets: {
                    name: string;
                    flow: number;
                    requiredFlow: number | null;
                    margin: number | null;
                }[];
            } | null;
            uncertainty: {
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    low: number;
                    high: number;
                };
                power: {
                    low: number;
                    high: number;
                };
                annualEnergy: {
                    low: number;
                    high: number;
                };
                laws: {
                    power: {
                        low: number;
                        high: number;
                    };
                    annualEnergy: {
                        low: number;
                        high: number;
                    };
                };
            };
            npsh: {
                available: number;
                required?: number;
                ratio?: number;
            };
            suctionPressure: number;
            notChecked: ("npsh" | "motor" | "minimum-flow" | "surge" | "line-pressure")[];
            screen: {
                meanVelocity: number;
                peakVelocity: number;
                cloggedFraction: number;
            } | null;
            heat: {
                power: number;
                motorEfficiencyAssumed: boolean;
                dailyRise: number | null;
                annualEnergy: number | null;
                annualCost: number | null;
            };
            coveredIntake: {
                suctionHead: number;
                force: number;
            } | null;
            cautions: components["schemas"]["Caution"][];
        };
        RejectedCandidate: {
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            count: number;
            reason: "gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            reasons: ("gravity-suffices" | "efficiency-impossible" | "dead-head" | "not-enough-head" | "reverse-flow" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting")[];
            detail: string;
            shortfall: {
                outlet: string;
                setting: number;
                flow: number;
                requiredFlow: number;
            } | null;
            remedy?: {
                throttle: {
                    head: number;
                    kv: number;
                    cv: number;
                };
                setting: number;
                flow: number;
                power: number;
                annualEnergy: number;
                annualCost: number | null;
            };
        };
        Losses: {
            hydraulicPower: number;
            rows: {
                element: string;
                kind: "intake" | "pipe" | "fitting" | "valve" | "loss" | "bore-change" | "tee-mouth" | "trim" | "outlet" | "lift" | "system-curve";
                name: string | null;
                bore: number | null;
                flow: number;
                head: number;
                power: number;
                powerShare: number;
                annualEnergy: number;
                annualCost: number | null;
                savings: {
                    boreUp: {
                        pipe: string;
                        grid: {
                            candidate: number;
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        continuous: {
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                    halved: {
                        grid: {
                            candidate: number;
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        continuous: {
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                    removed: {
                        grid: {
                            candidate: number;
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        continuous: {
                            setting: number;
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                } | null;
            }[];
        };
        RecommendationInput: {
            loop: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            pumps?: (string | components["schemas"]["PumpInput"] | components["schemas"]["CountedPumpInput"])[];
            price?: number;
            tariff?: string | components["schemas"]["TariffInput"];
            currency?: string;
            hoursPerDay?: number;
            balancing?: "as-built" | "trimmed";
            objective?: "energy-cost" | "life-cycle-cost";
            lifeCycle?: components["schemas"]["LifeCycleTermsInput"];
            limits?: components["schemas"]["LimitsInput"];
            assurance?: "calibration" | {
                grade: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            } | {
                margin: number;
            } | {
                frictionMultiplier: number;
            };
            heat?: components["schemas"]["HeatTermsInput"];
            detail?: "plain" | "losses";
            rankingLimit?: number;
        };
        CountedPumpInput: {
            pump: string | components["schemas"]["PumpInput"];
            count?: number;
        };
        LifeCycleTermsInput: {
            years?: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            minutesPerFailure?: number;
        };
        HeatTermsInput: {
            cop: number;
            mode: "cooling" | "heating";
            inRanking?: boolean;
        };
        Design: {
            best: components["schemas"]["BestDesign"] | null;
            ranking: components["schemas"]["DesignRow"][];
            frontier: {
                head: number;
                cost: number;
            }[];
            rejected: components["schemas"]["RejectedDesign"][];
            solution: "optimal" | "bounded";
            optimalityGap: number;
            counts: {
                candidates: number;
                feasible: number;
                rejected: number;
                lists: number;
            };
            assumptions: {
                price: number;
                tariff: {
                    id: string | null;
                    key?: string;
                    name: string;
                    year: number;
                } | null;
                currency: string;
                hoursPerDay: number;
                trimPrice: number;
                years: number;
                discountRate: number;
                inflation: number;
                energyInflation: number;
                labourRate: number;
                minutesPerFailure: number;
                limits: {
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
            };
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
            uncertainty: {
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    low: number;
                    high: number;
                };
                power: {
                    low: number;
                    high: number;
                };
                annualEnergy: {
                    low: number;
                    high: number;
                };
                laws: {
                    power: {
                        low: number;
                        high: number;
                    };
                    annualEnergy: {
                        low: number;
                        high: number;
                    };
                };
            };
            npsh: {
                available: number;
                required?: number;
                ratio?: number;
            };
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
        DesignRequestInput: {
            loop: string | components["schemas"]["DesignLoopInput"];
            pumps?: (string | components["schemas"]["PumpInput"] | components["schemas"]["CountedPumpInput"])[];
            pipePrices?: components["schemas"]["PipePriceInput"][];
            trimPrice?: number;
            price?: number;
            tariff?: string | components["schemas"]["TariffInput"];
            hoursPerDay?: number;
            years?: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            limits?: components["schemas"]["DesignLimitsInput"];
            rankingLimit?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        DesignLoopInput: {
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            readonly cautions?: unknown;
            key?: string;
            name: string;
            water?: components["schemas"]["WaterInput"];
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankInput"];
            intake?: components["schemas"]["IntakeInput"];
            basin?: components["schemas"]["BasinInput"];
            siphonBreakDepth?: number | string;
            overflowCapacity?: number | string;
            gauges?: components["schemas"]["GaugesInput"];
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpInput"];
            limits?: components["schemas"]["LimitsInput"];
            staticHead?: number | string;
            boreChanges?: "abrupt" | "ignored";
            suction?: components["schemas"]["DesignElementInput"][];
            discharge: components["schemas"]["DesignBranchInput"];
        };
        DesignElementInput: components["schemas"]["PipeListInput"] | components["schemas"]["PipeInput"] | components["schemas"]["FittingInput"] | components["schemas"]["ValveInput"] | components["schemas"]["LossByCoefficientInput"] | components["schemas"]["LossByLengthInput"] | components["schemas"]["LossByPointInput"];
        PipeListInput: {
            pipes: (string | components["schemas"]["PipeBoreInput"])[];
            length: number | string;
        };
        DesignBranchInput: {
            run: components["schemas"]["DesignElementInput"][];
            outlet?: components["schemas"]["OutletInput"];
            branches?: components["schemas"]["DesignBranchInput"][];
            split?: "tee-90";
            highestElevation?: number | string;
        };
        PipePriceInput: {
            pipe: string | components["schemas"]["PipeBoreInput"];
            price: number;
        };
        DesignLimitsInput: {
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
        ScreenSizeRequestInput: {
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
        } | {
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
        } | {
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
        LeakExposureRequestInput: {
            opening: components["schemas"]["LeakOpeningInput"];
            depth: number | string;
            drop?: number | string;
            level?: number | string;
            tank: components["schemas"]["LeakTankInput"];
            floorArea?: number | string;
            dischargeCoefficient?: number;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        LeakOpeningInput: {
            diameter: number | string;
        } | {
            gap: number | string;
            fittingDiameter: number | string;
        };
        LeakTankInput: {
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
            options: components["schemas"]["ComparedOption"][];
            cheapest: number | null;
            breakEvenPrice: number | null;
            breakEvenValueAtRisk: number | null;
            sensitivity: components["schemas"]["ComparisonSensitivity"][];
            assumptions: {
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
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["ComparisonBasis"];
            units: {
                [key: string]: string;
            };
        };
        ComparedOption: {
            name: string;
            feasible: boolean;
            presentValue: number;
            range: {
                low: number;
                high: number;
            };
            elements: {
                purchase: number;
                installation: number;
                energy: number;
                operation: number;
                maintenance: number;
                downtime: number;
                environment: number;
                disposal: number;
            };
            years: components["schemas"]["ComparisonYear"][];
            payback: {
                simple: number | null;
                discounted: number | null;
            } | null;
            breakEvenPrice: number | null;
            breakEvenValueAtRisk: number | null;
            annualEnergy: number;
            annualEnergyCost: number;
            attention: {
                devices: number;
                hours: number;
                cost: number;
            };
            expectedLoss: {
                value: number;
                low: number;
                high: number;
            };
            assemblies: components["schemas"]["ComparisonAssemblyFigures"][];
            cautions: components["schemas"]["Caution"][];
        };
        ComparisonYear: {
            year: number;
            elements: {
                purchase: number;
                installation: number;
                energy: number;
                operation: number;
                maintenance: number;
                downtime: number;
                environment: number;
                disposal: number;
            };
            total: number;
            presentValue: number;
            running: number;
            cumulated: number;
        };
        ComparisonAssemblyFigures: {
            loop: {
                id: string | null;
                key?: string;
                name: string;
            } | null;
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
            servedShare: number | null;
            failuresPerDeviceYear: {
                value: number;
                low: number;
                high: number;
            } | null;
            attentionHours: number;
            price: number;
            lifeYears: number | null;
            ageYears: number;
        };
        ComparisonSensitivity: {
            input: "energy-price" | "energy-of-option" | "purchase-prices" | "labour-rate" | "attention" | "failures" | "value-at-risk" | "discount-rate" | "inflation" | "energy-inflation";
            low: number;
            high: number;
            effect: number;
            flips: boolean;
        };
        ComparisonBasis: {
            modelVersion: string;
            loops: {
                id: string;
                version: number | null;
            }[];
            pumps: {
                id: string;
                version: number | null;
            }[];
            tariffs: {
                id: string;
                version: number | null;
            }[];
            schedules: {
                id: string;
                version: number | null;
            }[];
        };
        ComparisonRequestInput: {
            name?: string;
            years: number;
            discountRate?: number;
            inflation?: number;
            energyInflation?: number;
            labourRate?: number;
            price?: number;
            tariff?: string | components["schemas"]["TariffInput"];
            currency?: string;
            minutesPerFailure?: number;
            options: components["schemas"]["ComparisonOptionInput"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ComparisonOptionInput: {
            name: string;
            assemblies: components["schemas"]["ComparisonAssemblyInput"][];
            extras?: components["schemas"]["ComparisonExtraInput"][];
            risk?: components["schemas"]["ComparisonRiskInput"];
        };
        ComparisonAssemblyInput: {
            loop?: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            consolidate?: components["schemas"]["ConsolidationInput"];
            pump?: string | components["schemas"]["PumpInput"];
            count?: number;
            new?: boolean;
            ageYears?: number;
            riskShare?: number;
            power?: number | string;
            setting?: number | string;
            hoursPerDay?: number;
            balancing?: "as-built" | "trimmed";
        };
        ConsolidationInput: {
            loops: (string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"])[];
            suction: components["schemas"]["RunElementInput"][];
            manifold: components["schemas"]["RunElementInput"][];
            intake?: components["schemas"]["IntakeInput"];
        };
        ComparisonExtraInput: {
            name: string;
            kind: "pipework" | "installation" | "operation" | "environment" | "disposal";
            cost: number;
            year: number;
            everyYears?: number;
        };
        ComparisonRiskInput: {
            valueAtRisk: number;
            survivalHours: number;
            meanRestoreHours: number;
            neededShare?: number;
        };
        ComparisonList: {
            items: components["schemas"]["ComparisonListed"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        ComparisonListed: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            currency: string;
            options: number;
            cheapest: string | null;
            summary: string;
        };
        BillOfMaterials: {
            materials: {
                kind: "pipe" | "fitting" | "valve" | "tee" | "nozzle" | "screen";
                name: string;
                count: number;
                length: number | null;
                bought: number | null;
                cost: number | null;
            }[];
            total: number | null;
            currency: string;
            complete: boolean;
            unpriced: string[];
            unnamed: string[];
            extra: {
                name: string;
                kind: "pipework";
                cost: number;
                year: number;
            } | null;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        BillOfMaterialsRequestInput: {
            loop: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            prices?: components["schemas"]["MaterialPriceInput"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        MaterialPriceInput: {
            name: string;
            price: number;
            soldBy?: number | string;
        };
        Spares: {
            spares: number;
            probability: number;
            meanDemand: number;
            atHighRate: {
                spares: number;
                probability: number;
                meanDemand: number;
            };
            failuresPerDeviceYear: {
                value: number;
                low: number;
                high: number;
            };
            positions: number;
            leadTimeDays: number;
            confidence: number;
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
        };
        SparesRequestInput: {
            pump?: string;
            failures?: components["schemas"]["FailuresInput"];
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
            status: "optimal" | "time-limit";
            gap: number | null;
            summary: string;
            budget: number[];
            discountRate: number;
            carryOver: boolean;
            candidates: components["schemas"]["Upgrade"][];
            items: components["schemas"]["UpgradePlanItem"][];
            leftOut: components["schemas"]["UpgradeLeftOut"][];
            spending: components["schemas"]["UpgradePlanYear"][];
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
            notBefore?: number;
            notAfter?: number;
            must?: boolean;
        };
        UpgradePlanItem: {
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
            missing: number | null;
        };
        UpgradePlanYear: {
            year: number;
            budget: number;
            available: number;
            spent: number;
            carried: number;
        };
        UpgradePlanMoreBudget: {
            budget: number[];
            presentValue: number;
            gain: number;
            status: "optimal" | "time-limit";
            gap: number | null;
        };
        UpgradePlanInput: {
            name?: string;
            years: number;
            budget: number[];
            discountRate: number;
            carryOver?: boolean;
            currency?: string;
            candidates: components["schemas"]["UpgradeInput"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        UpgradeInput: {
            name: string;
            cost: number;
            yearlySaving: number;
            lifeYears: number;
            group?: string;
            notBefore?: number;
            notAfter?: number;
            must?: boolean;
        };
        UpgradePlanList: {
            items: components["schemas"]["UpgradePlanListed"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        UpgradePlanListed: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            name: string;
            years: number;
            currency: string;
            presentValue: number;
            status: "optimal" | "time-limit";
            gap: number | null;
            summary: string;
        };
        SiteSummary: {
            loops: components["schemas"]["SummaryLoops"];
            devices: number;
            storedPumps: number;
            power: number;
            annualEnergy: number;
            annualCost: number | null;
            currency: string;
            short: components["schemas"]["SummaryShort"];
            aboveNeed: components["schemas"]["SummaryAboveNeed"];
            attention: components["schemas"]["SummaryAttention"];
            savings: components["schemas"]["SummarySaving"][];
            assumptions: components["schemas"]["SummaryAssumptions"];
            summary: string;
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            units: {
                [key: string]: string;
            };
        };
        SummaryLoops: {
            total: number;
            scheduled: number;
            withoutPump: number;
            withoutRequirement: number;
            unsolved: number;
        };
        SummaryShort: {
            count: number;
            loops: {
                loop: {
                    id: string;
                    key?: string;
                    name: string;
                };
                outlet: string;
                flow: number;
                requiredFlow: number;
                margin: number;
                phase: string | null;
            }[];
        };
        SummaryAboveNeed: {
            count: number;
            loops: {
                loop: {
                    id: string;
                    key?: string;
                    name: string;
                };
                installedSetting: number;
                setting: number;
                energySaved: number;
                costSaved: number | null;
            }[];
        };
        SummaryAttention: {
            service: {
                hours: number;
                parts: number;
                cost: number | null;
            };
            tasks: {
                hours: number;
                parts: number;
                cost: number | null;
            };
            hours: number;
            parts: number;
            cost: number | null;
        };
        SummarySaving: {
            loop: {
                id: string;
                key?: string;
                name: string;
            };
            kind: "setting" | "pump";
            pump: {
                id: string;
                key?: string;
                name: string;
            } | null;
            count: number;
            setting: number;
            energySaved: number;
            costSaved: number | null;
            purchase: number | null;
            simplePayback: number | null;
            paybackBeyondSetting: number | null;
            settingAlone: {
                setting: number;
                energySaved: number;
                costSaved: number | null;
            } | null;
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
            title: string;
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
            completions: number;
            timesAYear: number;
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
            currency: string;
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        MaintenanceTaskInput: {
            title: string;
            kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            every: string;
            minutes: number;
            parts?: number;
            loop?: string;
            pump?: string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            key?: string;
            nextDue?: unknown;
            due?: unknown;
            overdue?: unknown;
            daysUntilDue?: unknown;
            lastDone?: unknown;
            completions?: unknown;
            timesAYear?: unknown;
            annualHours?: unknown;
            annualParts?: unknown;
            annualCost?: unknown;
            currency?: unknown;
            cautions?: unknown;
            firstDue: string;
        };
        MaintenanceTaskList: {
            items: components["schemas"]["MaintenanceTaskItem"][];
            next: string | null;
            today: string;
            attention: components["schemas"]["MaintenanceAttention"];
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        MaintenanceTaskItem: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            title: string;
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
            completions: number;
            timesAYear: number;
            annualHours: number;
            annualParts: number;
            annualCost: number | null;
            currency: string;
        };
        MaintenanceAttention: {
            tasks: number;
            due: number;
            overdue: number;
            hours: number;
            parts: number;
            labour: number | null;
            cost: number | null;
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
            nextDue: string;
            units: {
                [key: string]: string;
            };
        };
        CompletionInput: {
            at: string;
            minutes?: number;
            note?: string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            task?: unknown;
            day?: unknown;
            nextDue?: unknown;
        };
        CompletionList: {
            items: components["schemas"]["CompletionItem"][];
            next: string | null;
            units: {
                [key: string]: string;
            };
        };
        CompletionItem: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            task: string;
            at: string;
            day: string;
            minutes?: number;
            note?: string;
        };
        StarterTasks: {
            items: components["schemas"]["MaintenanceTaskItem"][];
            kept: number;
            cautions: components["schemas"]["Caution"][];
            units: {
                [key: string]: string;
            };
        };
        StarterRequestInput: {
            firstDue?: string;
        };
        PipeTable: {
            items: {
                name: string;
                standard: string;
                nominal: string;
                outsideDiameter: number;
                minimumWall: number;
                insideDiameter: number;
                roughness: number;
                source: string;
            }[];
            units: {
                [key: string]: string;
            };
        };
        FittingTable: {
            items: {
                name: string;
                kind: "fitting" | "valve";
                method: string;
                value: number | null;
                laminarValue: number | null;
                sizeValue: number | null;
                angle: number | null;
                partOpenings: {
                    opening: number;
                    addedLossCoefficient: number;
                }[];
                description: string;
                source: string;
                partOpeningSource: string | null;
                fromMemory: boolean;
            }[];
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
            items: {
                code: string;
                severity: "note" | "warning" | "danger";
                sentence: string;
                source: string;
            }[];
        };
        SiteCopy: {
            format: "loopwright-site";
            formatVersion: 1;
            site: components["schemas"]["SiteItem"];
            tariffs: components["schemas"]["TariffItem"][];
            pumps: components["schemas"]["PumpItem"][];
            loops: components["schemas"]["LoopItem"][];
            schedules: components["schemas"]["ScheduleItem"][];
            comparisons: components["schemas"]["ComputedCopy"][];
            upgradePlans: components["schemas"]["ComputedCopy"][];
            maintenanceTasks: components["schemas"]["MaintenanceTaskCopy"][];
            completions: components["schemas"]["CompletionCopy"][];
            calibrations: components["schemas"]["CalibrationCopy"][];
            readings: components["schemas"]["ReadingsCopy"][];
            units: {
                [key: string]: string;
            };
        };
        SiteItem: {
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
        };
        ScheduleItem: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            tariff: string | null;
            phases: components["schemas"]["PhaseItem"][];
            emergency?: components["schemas"]["EmergencyItem"];
        };
        PhaseItem: {
            name: string;
            from: string;
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            factor?: number;
            requiredFlows?: {
                [key: string]: number;
            };
            volume?: components["schemas"]["VolumeDemand"];
            openings?: {
                [key: string]: number;
            };
            rampMinutes?: number;
            pulse?: components["schemas"]["Pulse"];
        };
        EmergencyItem: {
            factor: number;
            batteryEnergy?: number;
        };
        ComputedCopy: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            document: {
                [key: string]: unknown;
            };
        };
        MaintenanceTaskCopy: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            key?: string;
            title: string;
            kind: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            every: string;
            minutes: number;
            parts: number;
            loop?: string;
            pump?: string;
            firstDue: string;
        };
        CompletionCopy: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            task: string;
            at: string;
            day: string;
            minutes?: number;
            note?: string;
        };
        CalibrationCopy: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            loop: string;
            place: number;
            appliedAt: string;
            undoneAt: string | null;
            of: string;
            inUse: boolean;
            calibration: {
                parameters: {
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    value: number;
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    };
                }[];
                factors: {
                    friction: number;
                    head: number;
                    power: number;
                };
                badEnd: {
                    friction: number;
                    head: number;
                };
                pump: {
                    id: string;
                    fit: {
                        [key: string]: unknown;
                    };
                };
                from: string;
                to: string;
                readings: number;
                modelVersion: string;
            };
        };
        ReadingsCopy: {
            id: string;
            version: number;
            createdAt: string;
            updatedAt: string;
            loop: string;
            readings: components["schemas"]["Reading"][];
        };
        SiteCopyCounts: {
            tariffs: number;
            pumps: number;
            loops: number;
            schedules: number;
            comparisons: number;
            upgradePlans: number;
            maintenanceTasks: number;
            completions: number;
            calibrations: number;
            readings: number;
        };
        SiteCopyInput: {
            format: "loopwright-site";
            formatVersion: 1;
            site: components["schemas"]["SiteInput"];
            tariffs?: components["schemas"]["TariffInput"][];
            pumps?: components["schemas"]["PumpInput"][];
            loops?: components["schemas"]["LoopInput"][];
            schedules?: components["schemas"]["ScheduleInput"][];
            comparisons?: components["schemas"]["ComputedCopyInput"][];
            upgradePlans?: components["schemas"]["ComputedCopyInput"][];
            maintenanceTasks?: components["schemas"]["MaintenanceTaskCopyInput"][];
            completions?: components["schemas"]["CompletionCopyInput"][];
            calibrations?: components["schemas"]["CalibrationCopyInput"][];
            readings?: components["schemas"]["ReadingsCopyInput"][];
            units?: unknown;
        };
        ComputedCopyInput: {
            document: {
                [key: string]: unknown;
            };
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        MaintenanceTaskCopyInput: {
            title: string;
            kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            every: string;
            minutes: number;
            parts?: number;
            loop?: string;
            pump?: string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
            key?: string;
            nextDue?: unknown;
            due?: unknown;
            overdue?: unknown;
            daysUntilDue?: unknown;
            lastDone?: unknown;
            completions?: unknown;
            timesAYear?: unknown;
            annualHours?: unknown;
            annualParts?: unknown;
            annualCost?: unknown;
            currency?: unknown;
            cautions?: unknown;
            firstDue: string;
        };
        CompletionCopyInput: {
            task: string;
            at: string;
            day: string;
            minutes?: number;
            note?: string;
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        CalibrationCopyInput: {
            loop: string;
            place: number;
            appliedAt: string;
            undoneAt: string | null;
            of: string;
            inUse: boolean;
            calibration: {
                parameters: {
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    value: number;
                    standardError: number;
                    interval: {
                        low: number;
                        high: number;
                    };
                }[];
                factors: {
                    friction: number;
                    head: number;
                    power: number;
                };
                badEnd: {
                    friction: number;
                    head: number;
                };
                pump: {
                    id: string;
                    fit: {
                        [key: string]: unknown;
                    };
                };
                from: string;
                to: string;
                readings: number;
                modelVersion: string;
            };
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ReadingsCopyInput: {
            loop: string;
            readings: components["schemas"]["ReadingInput"][];
            readonly id?: unknown;
            readonly version?: unknown;
            readonly createdAt?: unknown;
            readonly updatedAt?: unknown;
            units?: unknown;
        };
        ProbeStatus: {
            status: "ok";
            version: string;
        };
        Specification: {
            [key: string]: unknown;
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
                    "application/json": components["schemas"]["Site"];
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
                "application/json": components["schemas"]["SiteInput"];
            };
        };
        responses: {
            200: {
                headers: {
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
                "application/json": components["schemas"]["PumpInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
            header?: never;
            path: {
                pumpId: string;
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
                    "application/json": components["schemas"]["Pump"];
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
                "application/json": components["schemas"]["PumpInput"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Pump"];
                };
            };
            201: {
                headers: {
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
            header?: never;
            path: {
                pumpId: string;
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
                    "application/json": components["schemas"]["Curves"];
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
                "application/json": components["schemas"]["LoopInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
                    "application/json": components["schemas"]["Loop"];
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
                "application/json": components["schemas"]["LoopInput"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Loop"];
                };
            };
            201: {
                headers: {
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
                    "application/json": components["schemas"]["SystemCurveTable"];
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
    getDutyPoint: {
        parameters: {
            query?: {
                pump?: string;
                setting?: number;
                velocity?: number | string;
                count?: number;
                price?: number;
                hoursPerDay?: number;
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
                    "application/json": components["schemas"]["DutyPoint"];
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
                "application/json": components["schemas"]["TariffInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
            header?: never;
            path: {
                tariffId: string;
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
                    "application/json": components["schemas"]["Tariff"];
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
                "application/json": components["schemas"]["TariffInput"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Tariff"];
                };
            };
            201: {
                headers: {
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
    putSchedule: {
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
                "application/json": components["schemas"]["ScheduleInput"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schedule"];
                    "text/csv": string;
                };
            };
            201: {
                headers: {
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
                    "application/json": components["schemas"]["Setpoint"];
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
    getSetpoints: {
        parameters: {
            query?: {
                at?: string;
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
                    "application/json": components["schemas"]["Setpoints"];
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
    getPumpChart: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                pumpId: string;
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
                    "image/svg+xml": string;
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
    getLoopChart: {
        parameters: {
            query?: {
                pump?: string;
                setting?: number;
                count?: number;
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
    getDayChart: {
        parameters: {
            query?: {
                date?: string;
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
                    "image/svg+xml": string;
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
    getComparisonChart: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                comparisonId: string;
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
                    "image/svg+xml": string;
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
    getComparisonReport: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                comparisonId: string;
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
                    "text/html": string;
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
    getLoopReport: {
        parameters: {
            query?: {
                pump?: string;
                count?: number;
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
                by?: "hour" | "day";
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
    takeReadings: {
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
                "application/json": components["schemas"]["ReadingsInput"];
                "text/csv": string;
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadingsTaken"];
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
                    "application/json": components["schemas"]["Condition"];
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
    getCalibrations: {
        parameters: {
            query?: {
                units?: "metric" | "us";
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
                    "application/json": components["schemas"]["Calibrations"];
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
    calibrateLoop: {
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
                "application/json": components["schemas"]["CalibrationRequestInput"];
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
    undoCalibration: {
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
    recommend: {
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
                "application/json": components["schemas"]["RecommendationInput"];
            };
        };
        responses: {
            200: {
                headers: {
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
                    "application/json": components["schemas"]["Recommendation"];
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
                "application/json": components["schemas"]["DesignRequestInput"];
            };
        };
        responses: {
            200: {
                headers: {
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
                "application/json": components["schemas"]["DesignRequestInput"];
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
                "application/json": components["schemas"]["DesignRequestInput"];
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
    sizeScreen: {
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
                "application/json": components["schemas"]["ScreenSizeRequestInput"];
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
    exposeLeak: {
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
                "application/json": components["schemas"]["LeakExposureRequestInput"];
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
                "application/json": components["schemas"]["ComparisonRequestInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
            header?: never;
            path: {
                comparisonId: string;
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
                    "application/json": components["schemas"]["Comparison"];
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
    listMaterials: {
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
                "application/json": components["schemas"]["BillOfMaterialsRequestInput"];
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
    countSpares: {
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
                "application/json": components["schemas"]["SparesRequestInput"];
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
                "application/json": components["schemas"]["UpgradePlanInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
            header?: never;
            path: {
                planId: string;
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
                    "application/json": components["schemas"]["UpgradePlan"];
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
    deleteUpgradePlan: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header: {
                "If-Match": string;
            };
            path: {
                planId: string;
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
                    "application/json": components["schemas"]["SiteSummary"];
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
                "application/json": components["schemas"]["MaintenanceTaskInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
                taskId: string;
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
                taskId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MaintenanceTaskInput"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MaintenanceTask"];
                };
            };
            201: {
                headers: {
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
                taskId: string;
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
                taskId: string;
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
    completeMaintenanceTask: {
        parameters: {
            query?: {
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                taskId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CompletionInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
                taskId: string;
                completionId: string;
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
                taskId: string;
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
                "application/json": components["schemas"]["StarterRequestInput"];
            };
        };
        responses: {
            201: {
                headers: {
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
                    "text/calendar": string;
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
    getPipes: {
        parameters: {
            query?: {
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
                    "application/json": components["schemas"]["PipeTable"];
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
    getFittings: {
        parameters: {
            query?: {
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
                    "application/json": components["schemas"]["FittingTable"];
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
    getWater: {
        parameters: {
            query?: {
                temperature?: number | string;
                salinity?: number | string;
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
                    "application/json": components["schemas"]["WaterProperties"];
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
    getCautions: {
        parameters: {
            query?: {
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
                    "application/json": components["schemas"]["CautionTable"];
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
    exportSite: {
        parameters: {
            query?: {
                readings?: "true" | "false";
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
                    "application/json": components["schemas"]["SiteCopy"];
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
                "application/json": components["schemas"]["SiteCopyInput"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SiteCopyCounts"];
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
    getSpecification: {
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
                    "application/json": components["schemas"]["Specification"];
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
