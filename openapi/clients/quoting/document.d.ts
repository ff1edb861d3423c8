// biome-ignore-all format: written by a program.
// biome-ignore-all lint: written by a program.
// biome-ignore-all assist: written by a program.
/** The types of the interface; `emit-types.ts` writes them from openapi/openapi.json. */
export interface paths {
    "/v1/site": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Read the site
         * @description The facility: its name, zone, currency, elevation and prices.
         */
        get: operations["getSite"];
        /**
         * Replace the site
         * @description Writes all of the site. Prices are never converted when the currency changes.
         */
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
        /**
         * List pumps
         * @description Stored pumps in the order of their creation, page by page.
         */
        get: operations["listPumps"];
        put?: never;
        /**
         * Create a pump
         * @description Stores a pump and the curves that are fitted to its points.
         */
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
        /**
         * Read a pump
         * @description A stored pump as it was entered.
         */
        get: operations["getPump"];
        /**
         * Replace a pump
         * @description Writes all of a pump and fits its curves anew.
         */
        put: operations["replacePump"];
        post?: never;
        /**
         * Delete a pump
         * @description Deletes a pump that no loop has installed and no routine check is of.
         */
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
        /**
         * Create pumps from a table
         * @description Stores every pump of a table, or none: its columns in any order, in the units in force or those of the header, such as `flow [gal/h]`.
         */
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
        /**
         * Replace the head points of a pump
         * @description A table of points, its columns in any order; the unit in force, or that in the header.
         */
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
        /**
         * Replace the power points of a pump
         * @description A table of points, its columns in any order; the unit in force, or that in the header.
         */
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
        /**
         * The curves fitted to a pump
         * @description Head at full speed as a sum of powers of flow, power as a law of speed and flow, how well they fit, and a table at one setting.
         */
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
        /**
         * List loops
         * @description Stored loops in the order of their creation, page by page.
         */
        get: operations["listLoops"];
        put?: never;
        /**
         * Create a loop
         * @description Stores a loop by its pipework, or by its system curve where that is not known.
         */
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
        /**
         * Read a loop
         * @description A stored loop as it was entered.
         */
        get: operations["getLoop"];
        /**
         * Replace a loop
         * @description Writes all of a loop.
         */
        put: operations["replaceLoop"];
        post?: never;
        /**
         * Delete a loop
         * @description Deletes a loop that no routine check is of.
         */
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
        /**
         * The head that a loop needs against its flow
         * @description Whatever the pump: needed head and the flow of each outlet by total flow, and the least duty that serves every outlet.
         */
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
        /**
         * Where a pump at a setting lands on a loop
         * @description The stable crossing of least flow of pump and system curve, where a pump starting from rest arrives, with the flow of each outlet and what it costs a year.
         */
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
        /**
         * List tariffs
         * @description Stored tariffs in the order of their creation, page by page.
         */
        get: operations["listTariffs"];
        put?: never;
        /**
         * Create a tariff
         * @description Stores prices by month, day and time of day.
         */
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
        /**
         * Read a tariff
         * @description A stored tariff as it was entered.
         */
        get: operations["getTariff"];
        /**
         * Replace a tariff
         * @description Writes all of a tariff.
         */
        put: operations["replaceTariff"];
        post?: never;
        /**
         * Delete a tariff
         * @description Deletes a tariff that neither the site nor a schedule goes by.
         */
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
        /**
         * Read the schedule of a loop
         * @description The phases as they were entered, the smallest setting that serves each, and what they use and cost in a year of the calendar, hour by hour.
         */
        get: operations["getSchedule"];
        /**
         * Write the schedule of a loop
         * @description Writes all of the schedule; without If-Match it creates one where there is none.
         */
        put: operations["putSchedule"];
        post?: never;
        /**
         * Delete the schedule of a loop
         * @description Deletes the schedule; the loop stays.
         */
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
        /**
         * What to set now
         * @description The setting of the phase that runs, or without a schedule the one recommended for the installed pump. Never an error because a phase is infeasible: `feasible` tells. Ask again as often as you like with If-None-Match: while the setting holds, the answer is 304.
         */
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
        /**
         * What to set in the next 24 hours
         * @description Every step from now on, the first being the one that runs.
         */
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
        /**
         * A picture of the curves of a pump
         * @description Head and electrical power over flow at several settings, with the entered points, the best efficiency and where the head may lie by grade and scatter. Axes are in the units in force.
         */
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
        /**
         * A picture of a pump on a loop
         * @description The curve of a pump at a setting against the system curve of the loop, the duty point where they meet, what the loop needs, and where the pump may lie by grade and scatter. Where no pump is installed or serves, the system curve alone. Axes are in the units in force.
         */
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
        /**
         * A picture of the day of a loop
         * @description Phases, settings, flow, electrical power and price through one day of the site, hour by hour as its clocks show them, with what the day uses and costs. Without a schedule, the recommendation for the installed pump all day. Axes are in the units in force.
         */
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
        /**
         * A picture of the condition of a loop
         * @description How far each thing that was measured departs from what is predicted, day by day, with its robust trend, and what is found.
         */
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
        /**
         * A picture of a comparison
         * @description The life-cycle cost of each option stacked by element, and how it adds up year by year, with the break-even marked.
         */
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
        /**
         * The printable report of a comparison
         * @description One page to print, on A4 in metric units and on Letter in US units: which option costs least, the options side by side and by element, a picture, what runs, what the answer hangs on, assumptions, cautions, sources, and the versions of the data; it says where they have moved since.
         */
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
        /**
         * The printable report of a loop
         * @description One page to print, on A4 in metric units and on Letter in US units: the recommended pump, its setting and cost, what each outlet gets, pictures of the duty and of the day, how the installed pump compares, doubt, cautions, assumptions, sources, and the versions of the data.
         */
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
        /**
         * Read the readings of a loop
         * @description Readings from `from` on and before `to`, in the order of time, page by page; with `by` the means of hours or days.
         */
        get: operations["listReadings"];
        put?: never;
        /**
         * Take in readings of a loop
         * @description Stores all of the readings or none, in JSON or CSV, up to 50,000 and 8 MiB a request. A reading of an instant that has one already is merged into it: fields that it states win, those that it leaves out stay.
         */
        post: operations["takeReadings"];
        delete?: never;
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
        /**
         * What the readings of a loop mean
         * @description What was measured since the pump was installed against what loop and pump should do at each setting: a verdict with its evidence, the trend of each measure, when an outlet falls short, and what waiting costs against cleaning.
         */
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
        /**
         * The calibration in use, and those before it
         * @description Every calibration that was applied to the loop, the latest first, undone ones included.
         */
        get: operations["getCalibrations"];
        put?: never;
        /**
         * What do readings say about friction, head and power?
         * @description Fits multipliers of friction, head and power to the readings, tells their doubt, what the readings cannot tell, and which reading to take next. With `apply`, and the ETag of the loop in If-Match, the loop and its installed pump are computed with them from then on; the loop moves on by a version, and its document stays as entered.
         */
        post: operations["calibrateLoop"];
        /**
         * Undo the calibration in use
         * @description Goes back to the calibration applied before, else to the loop as entered. If-Match takes the ETag of the loop, which moves on by a version.
         */
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
        /**
         * Which pump at which setting?
         * @description Judges every candidate at the smallest setting at which all outlets get their flow and all limits hold, and ranks them by the cost of a year. Loop and pumps by id or inline; nothing is stored.
         */
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
        /**
         * Which pump at which setting, for a stored loop?
         * @description The question of POST /v1/recommendations as a query, for programs that only read.
         */
        get: operations["getRecommendation"];
        put?: never;
        post?: never;
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
        /**
         * Which intake screen does a flow take?
         * @description The least length, up to 10 diameters of a cylinder, at which mean and peak velocity through the part-clogged openings keep to the limit; failing that the least count with its least length. Nothing is stored.
         */
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
        /**
         * What would a leak let out?
         * @description Outflow at the start, times until the surface stands at the hole and at a level, volume and depth of the flood. For a pipe that is broken below the tank the height to the break counts. Nothing is stored.
         */
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
        /**
         * List comparisons
         * @description Stored comparisons in the order of their creation, page by page, without their figures.
         */
        get: operations["listComparisons"];
        put?: never;
        /**
         * Which option costs least over the years?
         * @description The life-cycle cost of each option by element and year: purchase, pipework, energy from the main job (by schedule and tariff where a loop has them), attention, parts, expected losses. The first option is what the others are measured against. Loops and pumps by id or inline. The comparison is stored.
         */
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
        /**
         * Read a comparison
         * @description A stored comparison as it was made; `stale` tells whether its basis has moved since.
         */
        get: operations["getComparison"];
        put?: never;
        post?: never;
        /**
         * Delete a comparison
         * @description Deletes a stored comparison.
         */
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
        /**
         * What is a loop's pipework made of, and what does it cost?
         * @description Pipes by length, fittings, valves, tees, nozzles and screens by pieces, priced by the list that comes along. The pump is no part of it. The total can be pasted into the extras of a comparison. Nothing is stored.
         */
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
        /**
         * How many spares must lie on the shelf?
         * @description The smallest number of spares that lasts through one lead time, from failure counts (Poisson), also for the worst rate that the counts still allow. Nothing is stored.
         */
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
        /**
         * List upgrade plans
         * @description Stored plans in the order of their creation, page by page, without their candidates.
         */
        get: operations["listUpgradePlans"];
        put?: never;
        /**
         * Which upgrades in which year?
         * @description Chooses among the candidates, and a year for each, what is worth most in present value under a budget a year; tells why each other one stays out and what 1 % more budget would be worth. The plan is stored.
         */
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
        /**
         * Read an upgrade plan
         * @description A stored plan as it was made.
         */
        get: operations["getUpgradePlan"];
        put?: never;
        post?: never;
        /**
         * Delete an upgrade plan
         * @description Deletes a stored plan.
         */
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
        /**
         * The whole site
         * @description Power, energy and cost of all loops with their installed pumps, the loops short of flow and above their need, the hours that service and routine checks take, and the ten largest savings over all stored pumps at the same requirement. As CSV the savings. Takes a while for a large site: each loop is worked out once for as long as nothing changes that it follows from.
         */
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
        /**
         * List routine checks
         * @description Stored checks in the order of their creation, page by page: when each is due, and what all that the filters let through ask of a year in hours and money.
         */
        get: operations["listMaintenanceTasks"];
        put?: never;
        /**
         * Create a routine check
         * @description Stores what is to be done at a loop or a pump again and again, and when first.
         */
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
        /**
         * Read a routine check
         * @description A stored check as it was entered, and when it is due.
         */
        get: operations["getMaintenanceTask"];
        /**
         * Replace a routine check
         * @description Writes all of a check; its completions stay, and the day it is due follows anew.
         */
        put: operations["replaceMaintenanceTask"];
        post?: never;
        /**
         * Delete a routine check
         * @description Deletes a check with its completions.
         */
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
        /**
         * List when a routine check was done
         * @description The completions of a check in the order of their instants, page by page.
         */
        get: operations["listCompletions"];
        put?: never;
        /**
         * Enter that a routine check was done
         * @description Stores when a check was done, in any order; it is due next one interval after the latest. Sent again as it was, it is answered again and not stored twice.
         */
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
        /**
         * Read when a routine check was done
         * @description A completion as it was entered.
         */
        get: operations["getCompletion"];
        put?: never;
        post?: never;
        /**
         * Take a completion away
         * @description Deletes a completion that was entered by mistake; the day the check is due follows anew.
         */
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
        /**
         * Create the starter set of a loop
         * @description Stores the routine checks that common practice asks of a loop: an inspection for each bulkhead of its pipework, the cleaning of its intake screens, the wet-end service of its installed pump, its unions, the test of its residual-current device. Those that it has are not made again; each can be changed or deleted afterwards.
         */
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
        /**
         * Routine checks as a calendar
         * @description A calendar (RFC 5545) to subscribe to: one event a check, all day on the day it is due next, and on by its interval. A completion moves it; an overdue check stays on its day.
         */
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
        /**
         * The standard pipes
         * @description The sizes that a loop may name, with the mean bore that friction takes.
         */
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
        /**
         * The fittings and valves
         * @description The fittings and valves that a loop may name, how their loss is found, and on whose authority.
         */
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
        /**
         * What water weighs and how it flows
         * @description Density, viscosity and vapour pressure at a temperature and salinity, as every computation takes them.
         */
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
        /**
         * The cautions
         * @description Every caution that an answer can carry, by its code: how grave it is, what it says and on whose authority.
         */
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
        /**
         * Export the site
         * @description All that the site holds as one document, as of one instant. What was entered is there to twelve digits, in the units in force; exported from where it was imported, it is the same.
         */
        get: operations["exportSite"];
        put?: never;
        /**
         * Import a site
         * @description Stores all of an export, or nothing, in a site that holds no records; the site itself is replaced. Ids, versions and times are kept, so that what names a record finds it; a record without them gets new ones. The site's version goes on from where it is, at least.
         */
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
        /**
         * Does the process live?
         * @description Answers as soon as the process takes requests; asks nothing of the database.
         */
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
        /**
         * Can the service serve?
         * @description Asks the database; 503 while it does not answer.
         */
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
        /**
         * The OpenAPI document
         * @description Every operation, parameter and field of this service.
         */
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
        /** @description An error in the form of RFC 9457. */
        Problem: {
            /**
             * @description Names the kind of problem.
             * @example urn:loopwright:problem:invalid-request
             */
            type: string;
            /**
             * @description The last part of `type`: body-too-large, cut-short, headers-too-large, in-use, internal-error, invalid-request, limit-exceeded, loopback-only, malformed-csv, malformed-json, malformed-request, malformed-url, malformed-utf8, method-not-allowed, missing-body, no-installed-pump, no-requirement, no-value, not-acceptable, not-calibrated, not-empty, not-found, stale-version, storage-full, too-slow, unavailable, unsolved, unsupported-media-type, url-too-long, version-required.
             * @example invalid-request
             */
            code: string;
            /** @description The kind of problem in a few words. */
            title: string;
            /**
             * @description The HTTP status.
             * @example 422
             */
            status: number;
            /** @description This occurrence in a sentence. */
            detail: string;
            /**
             * @description The path of the request, without its query.
             * @example /v1/pumps
             */
            instance: string;
            /** @description Names the request in the log. */
            requestId: string;
            /** @description The single faults, where there are such. */
            errors?: components["schemas"]["ProblemError"][];
            /** @description The limit that is exceeded. */
            limit?: number;
            /** @description What was found in its place. */
            actual?: number;
            /** @description Those that stand in the way of a deletion. */
            usedBy?: components["schemas"]["UsedBy"][];
        };
        /** @description One fault of a request, named by pointer, parameter or header. */
        ProblemError: {
            /**
             * @description JSON pointer (RFC 6901) to the deepest member of the body that is concerned.
             * @example /headPoints/2/flow
             */
            pointer?: string;
            /** @description Name of a query parameter. */
            parameter?: string;
            /** @description Name of a request header. */
            header?: string;
            /**
             * @description What is wrong there.
             * @example is required
             */
            detail: string;
            /** @description Line of a CSV body, from 1. */
            line?: number;
            /** @description The limit that is exceeded. */
            limit?: number;
            /** @description What was found in its place. */
            actual?: number;
        };
        /** @description A resource that uses the one in question. */
        UsedBy: {
            /**
             * @description The kind of resource.
             * @example loop
             */
            kind: string;
            /** @description Its id. */
            id: string;
            /** @description Its name. */
            name: string;
        };
        /** @description A facility. */
        Site: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters.
             * @example Skerry Point Marine Station
             */
            name: string;
            /**
             * @description A zone of the IANA time zone database.
             * @example Europe/Lisbon
             */
            timeZone: string;
            /**
             * @description The currency of all prices, by its letters of ISO 4217; nothing is ever converted.
             * @example EUR
             */
            currency: string;
            /**
             * @description Above sea level; sets the pressure of the air. [m; ft with `units=us`]
             * @example 10
             */
            elevation: number;
            /**
             * @description The price of electricity per kWh, or null.
             * @example 0.21
             */
            price: number | null;
            /**
             * @description Id of the tariff that prices go by, before `price`, where a request states neither; or null.
             * @example 0198f1c2
             */
            tariff: string | null;
            /**
             * @description What an hour of work costs, or null.
             * @example 30
             */
            labourRate: number | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A facility as its user enters it. */
        SiteInput: {
            /**
             * @description A name, 1 to 120 characters.
             * @example Skerry Point Marine Station
             */
            name: string;
            /**
             * @description A zone of the IANA time zone database.
             * @example Europe/Lisbon
             */
            timeZone: string;
            /**
             * @description The currency of all prices, by its letters of ISO 4217; nothing is ever converted.
             * @example EUR
             */
            currency: string;
            /**
             * @description Above sea level; sets the pressure of the air. [m; ft with `units=us`]
             * @default 0
             * @example 10
             */
            elevation?: number | string;
            /**
             * @description The price of electricity per kWh, or null.
             * @default null
             * @example 0.21
             */
            price?: number | null;
            /**
             * @description Id of the tariff that prices go by, before `price`, where a request states neither; or null.
             * @default null
             * @example 0198f1c2
             */
            tariff?: string | null;
            /**
             * @description What an hour of work costs, or null.
             * @default null
             * @example 30
             */
            labourRate?: number | null;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A stored pump. */
        Pump: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Canister 250
             */
            name: string;
            /**
             * @description The rated speed in revolutions a minute, for information.
             * @example 3000
             */
            ratedSpeed?: number;
            /** @description Points of the head curve, with three or more distinct flows at full speed. */
            headPoints: components["schemas"]["HeadPoint"][];
            /** @description Points of the electrical power. */
            powerPoints: components["schemas"]["PowerPoint"][];
            settings: components["schemas"]["Settings"];
            /** @description The true speed at settings, rising strictly and spanning them; without it the setting is the speed. */
            speedMap?: components["schemas"]["SpeedPoint"][];
            /** @description Points of the required NPSH, at full speed. */
            npshPoints?: components["schemas"]["NpshPoint"][];
            /**
             * @description The electrical power at rest. [W]
             * @example 3
             */
            standbyPower: number;
            flowLimits?: components["schemas"]["FlowLimits"];
            /**
             * @description The acceptance grade of ISO 9906 that the curves keep.
             * @example 2B
             * @enum {string}
             */
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            /**
             * @description Whether the pump stands beside the water or in it.
             * @example dry
             * @enum {string}
             */
            mounting?: "dry" | "submerged";
            /**
             * @description The fraction of the power that reaches the shaft; 0.8 is assumed for a dry pump without it.
             * @example 0.8
             */
            motorEfficiency?: number;
            /**
             * @description What the pump costs, in the site's currency.
             * @example 780
             */
            price?: number;
            /**
             * @description The years that the pump is expected to serve.
             * @example 8
             */
            expectedLifeYears?: number;
            failures?: components["schemas"]["Failures"];
            service?: components["schemas"]["Service"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A point of the head curve at a setting. */
        HeadPoint: {
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow: number;
            /**
             * @description Head of the pump; one in a unit of pressure is that of a column of sea water of 25 degC and 35 g/kg, 1023.34 kg/m3, unless the pump comes with a loop, whose water it then is. [m; ft with `units=us`]
             * @example 4.5
             */
            head: number;
            /**
             * @description Setting of the pump's controller. [%]
             * @example 100
             */
            setting: number;
        };
        /** @description The electrical power at a setting, and at a flow where that was noted. */
        PowerPoint: {
            /**
             * @description Setting of the pump's controller. [%]
             * @example 60
             */
            setting: number;
            /**
             * @description Electrical power, standby included. [W]
             * @example 55
             */
            power: number;
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow?: number;
        };
        /** @description The grid of settings: min, min + step and so on below max, and max. */
        Settings: {
            /**
             * @description The lowest setting at which the pump runs. [%]
             * @example 30
             */
            min: number;
            /**
             * @description The highest setting. [%]
             * @example 100
             */
            max: number;
            /**
             * @description The step between settings, counted from `min`. [%]
             * @example 1
             */
            step: number;
        };
        /** @description The true speed at a setting. */
        SpeedPoint: {
            /**
             * @description Setting of the pump's controller. [%]
             * @example 30
             */
            setting: number;
            /**
             * @description The true speed there, in % of full speed. [%]
             * @example 41
             */
            speed: number;
        };
        /** @description The required NPSH at a flow. */
        NpshPoint: {
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow: number;
            /**
             * @description Net positive suction head that the pump requires. [m; ft with `units=us`]
             * @example 1.2
             */
            head: number;
        };
        FlowLimits: {
            /**
             * @description The least flow that the pump bears for long, at full speed. [L/h; gal/h with `units=us`]
             * @example 1500
             */
            min?: number;
            /**
             * @description The greatest flow that the pump bears for long, at full speed. [L/h; gal/h with `units=us`]
             * @example 14000
             */
            max?: number;
        };
        Failures: {
            /**
             * @description How many of the devices failed.
             * @example 2
             */
            count: number;
            /**
             * @description How many devices were watched.
             * @example 10
             */
            devices: number;
            /**
             * @description For how many years each.
             * @example 3
             */
            years: number;
        };
        Service: {
            /**
             * @description The months between two services.
             * @example 6
             */
            everyMonths: number;
            /**
             * @description The minutes that a service takes.
             * @example 45
             */
            minutes: number;
            /**
             * @description What the parts of a service cost, in the site's currency.
             * @example 20
             */
            parts: number;
        };
        /** @description A pump as its user enters it. */
        PumpInput: {
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Canister 250
             */
            name: string;
            /**
             * @description The rated speed in revolutions a minute, for information.
             * @example 3000
             */
            ratedSpeed?: number;
            /** @description Points of the head curve, with three or more distinct flows at full speed. */
            headPoints: components["schemas"]["HeadPointInput"][];
            /** @description Points of the electrical power. */
            powerPoints: components["schemas"]["PowerPointInput"][];
            settings?: components["schemas"]["SettingsInput"];
            /** @description The true speed at settings, rising strictly and spanning them; without it the setting is the speed. */
            speedMap?: components["schemas"]["SpeedPointInput"][];
            /** @description Points of the required NPSH, at full speed. */
            npshPoints?: components["schemas"]["NpshPointInput"][];
            /**
             * @description The electrical power at rest. [W]
             * @default 0
             * @example 3
             */
            standbyPower?: number | string;
            flowLimits?: components["schemas"]["FlowLimitsInput"];
            /**
             * @description The acceptance grade of ISO 9906 that the curves keep.
             * @example 2B
             * @enum {string}
             */
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            /**
             * @description Whether the pump stands beside the water or in it.
             * @example dry
             * @enum {string}
             */
            mounting?: "dry" | "submerged";
            /**
             * @description The fraction of the power that reaches the shaft; 0.8 is assumed for a dry pump without it.
             * @example 0.8
             */
            motorEfficiency?: number;
            /**
             * @description What the pump costs, in the site's currency.
             * @example 780
             */
            price?: number;
            /**
             * @description The years that the pump is expected to serve.
             * @example 8
             */
            expectedLifeYears?: number;
            failures?: components["schemas"]["FailuresInput"];
            service?: components["schemas"]["ServiceInput"];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A point of the head curve at a setting. */
        HeadPointInput: {
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow: number | string;
            /**
             * @description Head of the pump; one in a unit of pressure is that of a column of sea water of 25 degC and 35 g/kg, 1023.34 kg/m3, unless the pump comes with a loop, whose water it then is. [m; ft with `units=us`]
             * @example 4.5
             */
            head: number | string;
            /**
             * @description Setting of the pump's controller. [%]
             * @default 100
             * @example 100
             */
            setting?: number | string;
        };
        /** @description The electrical power at a setting, and at a flow where that was noted. */
        PowerPointInput: {
            /**
             * @description Setting of the pump's controller. [%]
             * @example 60
             */
            setting: number | string;
            /**
             * @description Electrical power, standby included. [W]
             * @example 55
             */
            power: number | string;
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow?: number | string;
        };
        /**
         * @description The grid of settings; 30 to 100 by 1 without it.
         * @default {
         *       "min": 30,
         *       "max": 100,
         *       "step": 1
         *     }
         */
        SettingsInput: {
            /**
             * @description The lowest setting at which the pump runs. [%]
             * @default 30
             * @example 30
             */
            min?: number | string;
            /**
             * @description The highest setting. [%]
             * @default 100
             * @example 100
             */
            max?: number | string;
            /**
             * @description The step between settings, counted from `min`. [%]
             * @default 1
             * @example 1
             */
            step?: number | string;
        };
        /** @description The true speed at a setting. */
        SpeedPointInput: {
            /**
             * @description Setting of the pump's controller. [%]
             * @example 30
             */
            setting: number | string;
            /**
             * @description The true speed there, in % of full speed. [%]
             * @example 41
             */
            speed: number | string;
        };
        /** @description The required NPSH at a flow. */
        NpshPointInput: {
            /**
             * @description Flow through the pump. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            flow: number | string;
            /**
             * @description Net positive suction head that the pump requires. [m; ft with `units=us`]
             * @example 1.2
             */
            head: number | string;
        };
        FlowLimitsInput: {
            /**
             * @description The least flow that the pump bears for long, at full speed. [L/h; gal/h with `units=us`]
             * @example 1500
             */
            min?: number | string;
            /**
             * @description The greatest flow that the pump bears for long, at full speed. [L/h; gal/h with `units=us`]
             * @example 14000
             */
            max?: number | string;
        };
        FailuresInput: {
            /**
             * @description How many of the devices failed.
             * @example 2
             */
            count: number;
            /**
             * @description How many devices were watched.
             * @example 10
             */
            devices: number;
            /**
             * @description For how many years each.
             * @example 3
             */
            years: number;
        };
        ServiceInput: {
            /**
             * @description The months between two services.
             * @example 6
             */
            everyMonths: number;
            /**
             * @description The minutes that a service takes.
             * @example 45
             */
            minutes: number;
            /**
             * @description What the parts of a service cost, in the site's currency.
             * @example 20
             */
            parts: number;
        };
        /** @description A page of a list. */
        PumpList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["PumpItem"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A stored pump in a list. */
        PumpItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Canister 250
             */
            name: string;
            /**
             * @description The rated speed in revolutions a minute, for information.
             * @example 3000
             */
            ratedSpeed?: number;
            /** @description Points of the head curve, with three or more distinct flows at full speed. */
            headPoints: components["schemas"]["HeadPoint"][];
            /** @description Points of the electrical power. */
            powerPoints: components["schemas"]["PowerPoint"][];
            settings: components["schemas"]["Settings"];
            /** @description The true speed at settings, rising strictly and spanning them; without it the setting is the speed. */
            speedMap?: components["schemas"]["SpeedPoint"][];
            /** @description Points of the required NPSH, at full speed. */
            npshPoints?: components["schemas"]["NpshPoint"][];
            /**
             * @description The electrical power at rest. [W]
             * @example 3
             */
            standbyPower: number;
            flowLimits?: components["schemas"]["FlowLimits"];
            /**
             * @description The acceptance grade of ISO 9906 that the curves keep.
             * @example 2B
             * @enum {string}
             */
            grade?: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            /**
             * @description Whether the pump stands beside the water or in it.
             * @example dry
             * @enum {string}
             */
            mounting?: "dry" | "submerged";
            /**
             * @description The fraction of the power that reaches the shaft; 0.8 is assumed for a dry pump without it.
             * @example 0.8
             */
            motorEfficiency?: number;
            /**
             * @description What the pump costs, in the site's currency.
             * @example 780
             */
            price?: number;
            /**
             * @description The years that the pump is expected to serve.
             * @example 8
             */
            expectedLifeYears?: number;
            failures?: components["schemas"]["Failures"];
            service?: components["schemas"]["Service"];
        };
        /** @description The curves fitted to the points of a pump, in water of 25 degC and 35 g/kg. */
        Curves: {
            head: {
                /**
                 * @description Powers of Q/flowScale in the fit, 0 first.
                 * @example [
                 *       0,
                 *       2
                 *     ]
                 */
                powers: number[];
                /**
                 * @description One a power, in metres whatever the units: H = sum c_p (Q/flowScale)^p at full speed.
                 * @example [
                 *       5.09464,
                 *       -3.19473
                 *     ]
                 */
                coefficients: number[];
                /**
                 * @description Largest flow of the points at full speed. [L/h; gal/h with `units=us`]
                 * @example 14000
                 */
                flowScale: number;
                range: {
                    /**
                     * @description Least flow of the points at full speed. [L/h; gal/h with `units=us`]
                     * @example 0
                     */
                    min: number;
                    /**
                     * @description Largest flow of the points at full speed. [L/h; gal/h with `units=us`]
                     * @example 14000
                     */
                    max: number;
                };
                r2: number | null;
                standardError: number | null;
                /** @description One a head point, in its order. */
                residuals: number[];
                /**
                 * @description Root mean square error at a point left out of the fit. [m; ft with `units=us`]
                 * @example 0.00894
                 */
                leaveOneOut: number;
            };
            power: {
                /**
                 * @description k of P = standby + c r^k g(q).
                 * @example 3.01021
                 */
                exponent: number;
                /**
                 * @description The points are at one speed: the cube law stands in.
                 * @example false
                 */
                exponentAssumed: boolean;
                /**
                 * @description c: power above standby at full speed and x = 0 [W].
                 * @example 242
                 */
                coefficient: number;
                /**
                 * @description Coefficients of x, then x^2, in g = exp(b1 x + b2 x^2), x = q - flowCentre; empty without flow.
                 * @example []
                 */
                flowTerms: number[];
                flowScale: number | null;
                flowCentre: number | null;
                flowRange: {
                    /**
                     * @description Least q of the points; q is held there.
                     * @example 0.2
                     */
                    min: number;
                    /**
                     * @description Largest q of the points; q is held there.
                     * @example 1
                     */
                    max: number;
                } | null;
                /**
                 * @description Standby power as entered. [W]
                 * @example 3
                 */
                standbyPower: number;
                r2: number | null;
                standardError: number | null;
            };
            bestEfficiencyPoint: {
                /**
                 * @description Flow of best efficiency at full speed. [L/h; gal/h with `units=us`]
                 * @example 9400
                 */
                flow: number;
                /**
                 * @description Head there. [m; ft with `units=us`]
                 * @example 3.65
                 */
                head: number;
                /**
                 * @description Efficiency there.
                 * @example 0.38
                 */
                efficiency: number;
            } | null;
            /** @description The curves at the setting asked for. */
            table: {
                /**
                 * @description Setting [%].
                 * @example 100
                 */
                setting: number;
                /**
                 * @description Flow of the pump. [L/h; gal/h with `units=us`]
                 * @example 7000
                 */
                flow: number;
                /**
                 * @description Its head there. [m; ft with `units=us`]
                 * @example 4.29596
                 */
                head: number;
                /**
                 * @description Its electrical power, standby included. [W]
                 * @example 245
                 */
                power: number;
                /**
                 * @description Wire to water, a fraction.
                 * @example 0.342
                 */
                efficiency: number;
            }[];
            /** @description What to know about the fit. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description Something that the reader of the figures must know. */
        Caution: {
            /**
             * @description Stable code of the caution.
             * @example screen-uneven
             */
            code: string;
            /**
             * @description How grave it is.
             * @example warning
             * @enum {string}
             */
            severity: "note" | "warning" | "danger";
            /**
             * @description What it says, and in brackets what it is about.
             * @example Water runs faster than the velocity limit in a pipe. (/discharge/run/0)
             */
            detail: string;
            /**
             * @description On whose authority.
             * @example common practice
             */
            source: string;
        };
        /** @description The versions that the figures rest on. */
        Basis: {
            /**
             * @description Version of the formulas; figures change only with it or with the records below.
             * @example 1
             */
            modelVersion: string;
            /**
             * @description The loop; null where none took part.
             * @example {
             *       "id": "0198c0de-0000-7000-8000-000000000001",
             *       "version": 3
             *     }
             */
            loop: {
                /**
                 * @description Id of the loop; null where it came with the request.
                 * @example 0198c0de-0000-7000-8000-000000000001
                 */
                id: string | null;
                /**
                 * @description Its version; null where it came with the request.
                 * @example 3
                 */
                version: number | null;
            } | null;
            /**
             * @description The pumps, in the order of the candidates.
             * @example [
             *       {
             *         "id": "0198c0de-0000-7000-8000-000000000002",
             *         "version": 1
             *       }
             *     ]
             */
            pumps: {
                /**
                 * @description Id of the pump; null where it came with the request.
                 * @example 0198c0de-0000-7000-8000-000000000001
                 */
                id: string | null;
                /**
                 * @description Its version; null where it came with the request.
                 * @example 3
                 */
                version: number | null;
            }[];
        };
        /** @description A stored loop. */
        Loop: components["schemas"]["SystemCurveLoop"] | components["schemas"]["PipeworkLoop"];
        /** @description A loop whose pipework is not known, by its system curve. */
        SystemCurveLoop: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water: components["schemas"]["Water"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @example -0.6
             */
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @example 1
             */
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            systemCurve: components["schemas"]["SystemCurve"];
            /** @description Where the flow leaves, in shares that add up to 1. */
            outlets: components["schemas"]["ShareOutlet"][];
        };
        /** @description The water that goes round. */
        Water: {
            /**
             * @description Its temperature. [degC; degF with `units=us`]
             * @example 25
             */
            temperature: number;
            /**
             * @description Its salinity. [g/kg]
             * @example 35
             */
            salinity: number;
        };
        /** @description The tank that a loop draws from and delivers to. */
        Tank: {
            /**
             * @description The volume of its water. [L; gal with `units=us`]
             * @example 2400
             */
            volume?: number;
            /**
             * @description The area of its surface. [m2; ft2 with `units=us`]
             * @example 4
             */
            area?: number;
            /**
             * @description Its inside width. [m; ft with `units=us`]
             * @example 0.8
             */
            width?: number;
            /**
             * @description The depth of its water. [m; ft with `units=us`]
             * @example 0.6
             */
            depth?: number;
        };
        /** @description Where water enters a loop. */
        Intake: {
            /**
             * @description K of the entrance on the first suction pipe; 0.5 is sharp-edged.
             * @example 0.5
             */
            lossCoefficient: number;
            /**
             * @description How far the intake lies below the surface. [m; ft with `units=us`]
             * @example 0.4
             */
            depth?: number;
            screen?: components["schemas"]["IntakeScreen"];
            /**
             * @description The width of the smallest animal in the tank, compared with the openings of the screen. [mm; in with `units=us`]
             * @example 6
             */
            smallestAnimal?: number;
            /**
             * @description Whether people can reach the intake; not known where it is left out.
             * @example false
             */
            reachable?: boolean;
        };
        /** @description The screen that keeps animals out of the intake. */
        IntakeScreen: components["schemas"]["CylinderScreen"] | components["schemas"]["FlatScreen"] | components["schemas"]["BoxScreen"];
        /** @description A cylinder drawn from one end. */
        CylinderScreen: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "cylinder";
            /**
             * @description The outside diameter of the screen. [mm; in with `units=us`]
             * @example 60
             */
            diameter: number;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @example 1
             */
            count: number;
        };
        /** @description A flat screen. */
        FlatScreen: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "flat";
            /**
             * @description The width of the screen. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @example 1
             */
            count: number;
        };
        /** @description A box screened on four sides and top, standing on a closed side. */
        BoxScreen: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "box";
            /**
             * @description The width of the box. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number;
            /**
             * @description The height of the box. [m; ft with `units=us`]
             * @example 0.2
             */
            height: number;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @example 1
             */
            count: number;
        };
        /** @description The basin that a return system draws from and drains back to. */
        Basin: {
            /**
             * @description The area of its surface. [m2; ft2 with `units=us`]
             * @example 1.5
             */
            area: number;
            /**
             * @description How far its water may still rise while the pump runs. [m; ft with `units=us`]
             * @example 0.2
             */
            freeboard: number;
        };
        /** @description The pump that a loop has. */
        InstalledPump: {
            /**
             * @description The id of a stored pump.
             * @example 0198f1c2
             */
            pump: string;
            /**
             * @description How many of them run side by side.
             * @example 1
             */
            count: number;
            /**
             * @description The setting that is dialled. [%]
             * @example 80
             */
            setting: number;
            /**
             * @description Whether each pump has a check valve behind it.
             * @example true
             */
            checkValves?: boolean;
            /**
             * Format: date
             * @description The day on which it was installed.
             * @example 2025-04-01
             */
            since?: string;
        };
        /** @description Head against the square of the flow, through points. */
        SystemCurve: {
            /**
             * @description The head at rest; without it 0 for one point, fitted for more. [m; ft with `units=us`]
             * @example 0
             */
            staticHead?: number;
            /** @description Points that were measured or read off. */
            points: components["schemas"]["SystemPoint"][];
        };
        /** @description A point of a system curve. */
        SystemPoint: {
            /**
             * @description Total flow. [L/h; gal/h with `units=us`]
             * @example 8000
             */
            flow: number;
            /**
             * @description Head that the loop needs for it. [m; ft with `units=us`]
             * @example 2.1
             */
            head: number;
        };
        /** @description Where a fixed share of the flow leaves a loop known by its system curve. */
        ShareOutlet: {
            /**
             * @description Names the outlet within its loop.
             * @example far end
             */
            name: string;
            /**
             * @description The fraction of the total flow that it gets.
             * @example 0.4
             */
            share: number;
            /**
             * @description The flow that the outlet needs at least; 0 is shut when flows are trimmed. [L/h; gal/h with `units=us`]
             * @example 3000
             */
            requiredFlow?: number;
            /**
             * @description The flow that the outlet may get at most. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            maximumFlow?: number;
        };
        /** @description A loop by its pipework. */
        PipeworkLoop: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water: components["schemas"]["Water"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @example -0.6
             */
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @example 1
             */
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            /**
             * @description Rise from the surface drawn from to the surface delivered to. [m; ft with `units=us`]
             * @example 0
             */
            staticHead: number;
            /** @description What the water passes from intake to pump. */
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
        };
        /** @description A part of a run; it acts on the flow of its run. */
        RunElement: components["schemas"]["Pipe"] | components["schemas"]["Fitting"] | components["schemas"]["Valve"] | components["schemas"]["LossByCoefficient"] | components["schemas"]["LossByLength"] | components["schemas"]["LossByPoint"];
        /** @description A length of pipe. */
        Pipe: {
            pipe: string | components["schemas"]["PipeBore"];
            /**
             * @description The length of the pipe. [m; ft with `units=us`]
             * @example 2.5
             */
            length: number;
        };
        /** @description A pipe that is not a standard size; its roughness is 0.0015 mm where it is not stated. */
        PipeBore: {
            /**
             * @description The mean bore. [mm; in with `units=us`]
             * @example 40.4
             */
            insideDiameter: number;
            /**
             * @description Absolute roughness of the wall; 0.0015 mm where it is not stated. [mm; in with `units=us`]
             * @example 0.0015
             */
            roughness?: number;
        };
        /** @description One or more equal fittings. */
        Fitting: {
            /**
             * @description A fitting of the reference table.
             * @example elbow-90
             */
            fitting: string;
            /**
             * @description How many of them; 1 where it is not stated.
             * @example 2
             */
            count?: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number;
        };
        /** @description A valve. */
        Valve: {
            valve: string | components["schemas"]["ValveByKv"] | components["schemas"]["ValveByCv"];
            /**
             * @description How far it is open; fully where it is not stated. [%]
             * @example 100
             */
            opening?: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number;
        };
        /** @description A valve known by its metric flow coefficient. */
        ValveByKv: {
            /**
             * @description Flow in m3/h at 1 bar, fully open.
             * @example 25
             */
            kv: number;
        };
        /** @description A valve known by its US flow coefficient. */
        ValveByCv: {
            /**
             * @description Flow in US gal/min at 1 psi, fully open.
             * @example 25
             */
            cv: number;
        };
        /** @description A loss by its coefficient. */
        LossByCoefficient: {
            /**
             * @description K of head = K v^2/2g.
             * @example 2
             */
            lossCoefficient: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number;
        };
        /** @description A loss by the length of pipe that loses as much. */
        LossByLength: {
            /**
             * @description The length of straight pipe that loses as much. [m; ft with `units=us`]
             * @example 1.2
             */
            equivalentLength: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number;
            /**
             * @description Absolute roughness of the wall; 0.0015 mm where it is not stated. [mm; in with `units=us`]
             * @example 0.0015
             */
            roughness?: number;
        };
        /** @description A loss that grows with the square of the flow, through one point. */
        LossByPoint: {
            loss: components["schemas"]["LossPoint"];
        };
        /** @description One point of a quadratic loss. */
        LossPoint: {
            /**
             * @description Head lost at the flow. [m; ft with `units=us`]
             * @example 0.6
             */
            head: number;
            /**
             * @description The flow at which it was noted. [L/h; gal/h with `units=us`]
             * @example 5000
             */
            flow: number;
        };
        /** @description A run that ends in an outlet or splits into branches. */
        Branch: {
            /** @description What the water passes, in order. */
            run: components["schemas"]["RunElement"][];
            outlet?: components["schemas"]["Outlet"];
            branches?: components["schemas"]["Branch"][];
            /**
             * @description Side branches lose what an equal 90 degree tee costs, the first branch being the straight run; no split loss without it.
             * @example tee-90
             * @enum {string}
             */
            split?: "tee-90";
        };
        /** @description Where water leaves a loop of pipework. */
        Outlet: {
            /**
             * @description Names the outlet within its loop.
             * @example far end
             */
            name: string;
            /**
             * @description The flow that the outlet needs at least; 0 is shut when flows are trimmed. [L/h; gal/h with `units=us`]
             * @example 3000
             */
            requiredFlow?: number;
            /**
             * @description The flow that the outlet may get at most. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            maximumFlow?: number;
            reach?: components["schemas"]["Reach"];
            /**
             * @description The bore of a nozzle at the end; without it that of the last pipe. [mm; in with `units=us`]
             * @example 15
             */
            nozzleDiameter?: number;
            /**
             * @description How many equal nozzles share the flow; 1 where it is not stated.
             * @example 1
             */
            nozzleCount?: number;
            /**
             * @description K of the whole exit loss on the nozzle or the last pipe; 1 where it is not stated.
             * @example 1
             */
            lossCoefficient?: number;
            /**
             * @description Rise to this outlet's surface above that of the loop. [m; ft with `units=us`]
             * @example 0.2
             */
            staticHead?: number;
        };
        /** @description What the stream of an outlet must still do far away. */
        Reach: {
            /**
             * @description How far away, on the jet's axis. [m; ft with `units=us`]
             * @example 2.5
             */
            distance: number;
            /**
             * @description How fast the water must still move there. [m/s; ft/s with `units=us`]
             * @example 0.1
             */
            velocity: number;
        };
        /** @description A loop as its user enters it. */
        LoopInput: components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
        /** @description A loop whose pipework is not known, by its system curve. */
        SystemCurveLoopInput: {
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water?: components["schemas"]["WaterInput"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @default 0
             * @example -0.6
             */
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankInput"];
            intake?: components["schemas"]["IntakeInput"];
            basin?: components["schemas"]["BasinInput"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number | string;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number | string;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @default 1
             * @example 1
             */
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpInput"];
            systemCurve: components["schemas"]["SystemCurveInput"];
            /** @description Where the flow leaves, in shares that add up to 1. */
            outlets: components["schemas"]["ShareOutletInput"][];
        };
        /**
         * @description The water that goes round; 25 degC and 35 g/kg without it.
         * @default {
         *       "temperature": 25,
         *       "salinity": 35
         *     }
         */
        WaterInput: {
            /**
             * @description Its temperature. [degC; degF with `units=us`]
             * @default 25
             * @example 25
             */
            temperature?: number | string;
            /**
             * @description Its salinity. [g/kg]
             * @default 35
             * @example 35
             */
            salinity?: number | string;
        };
        /** @description The tank that a loop draws from and delivers to. */
        TankInput: {
            /**
             * @description The volume of its water. [L; gal with `units=us`]
             * @example 2400
             */
            volume?: number | string;
            /**
             * @description The area of its surface. [m2; ft2 with `units=us`]
             * @example 4
             */
            area?: number | string;
            /**
             * @description Its inside width. [m; ft with `units=us`]
             * @example 0.8
             */
            width?: number | string;
            /**
             * @description The depth of its water. [m; ft with `units=us`]
             * @example 0.6
             */
            depth?: number | string;
        };
        /** @description Where water enters a loop. */
        IntakeInput: {
            /**
             * @description K of the entrance on the first suction pipe; 0.5 is sharp-edged.
             * @default 0.5
             * @example 0.5
             */
            lossCoefficient?: number;
            /**
             * @description How far the intake lies below the surface. [m; ft with `units=us`]
             * @example 0.4
             */
            depth?: number | string;
            screen?: components["schemas"]["IntakeScreenInput"];
            /**
             * @description The width of the smallest animal in the tank, compared with the openings of the screen. [mm; in with `units=us`]
             * @example 6
             */
            smallestAnimal?: number | string;
            /**
             * @description Whether people can reach the intake; not known where it is left out.
             * @example false
             */
            reachable?: boolean;
        };
        /** @description The screen that keeps animals out of the intake. */
        IntakeScreenInput: components["schemas"]["CylinderScreenInput"] | components["schemas"]["FlatScreenInput"] | components["schemas"]["BoxScreenInput"];
        /** @description A cylinder drawn from one end. */
        CylinderScreenInput: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "cylinder";
            /**
             * @description The outside diameter of the screen. [mm; in with `units=us`]
             * @example 60
             */
            diameter: number | string;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @default 1
             * @example 1
             */
            count?: number;
        };
        /** @description A flat screen. */
        FlatScreenInput: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "flat";
            /**
             * @description The width of the screen. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number | string;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @default 1
             * @example 1
             */
            count?: number;
        };
        /** @description A box screened on four sides and top, standing on a closed side. */
        BoxScreenInput: {
            /**
             * @description discriminator enum property added by openapi-typescript
             * @enum {string}
             */
            shape: "box";
            /**
             * @description The width of the box. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number | string;
            /**
             * @description The height of the box. [m; ft with `units=us`]
             * @example 0.2
             */
            height: number | string;
            /**
             * @description The length of the screen. [m; ft with `units=us`]
             * @example 0.5
             */
            length: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description How many equal screens share the flow.
             * @default 1
             * @example 1
             */
            count?: number;
        };
        /** @description The basin that a return system draws from and drains back to. */
        BasinInput: {
            /**
             * @description The area of its surface. [m2; ft2 with `units=us`]
             * @example 1.5
             */
            area: number | string;
            /**
             * @description How far its water may still rise while the pump runs. [m; ft with `units=us`]
             * @example 0.2
             */
            freeboard: number | string;
        };
        /** @description The pump that a loop has. */
        InstalledPumpInput: {
            /**
             * @description The id of a stored pump.
             * @example 0198f1c2
             */
            pump: string;
            /**
             * @description How many of them run side by side.
             * @default 1
             * @example 1
             */
            count?: number;
            /**
             * @description The setting that is dialled. [%]
             * @example 80
             */
            setting: number | string;
            /**
             * @description Whether each pump has a check valve behind it.
             * @example true
             */
            checkValves?: boolean;
            /**
             * Format: date
             * @description The day on which it was installed.
             * @example 2025-04-01
             */
            since?: string;
        };
        /** @description Head against the square of the flow, through points. */
        SystemCurveInput: {
            /**
             * @description The head at rest; without it 0 for one point, fitted for more. [m; ft with `units=us`]
             * @example 0
             */
            staticHead?: number | string;
            /** @description Points that were measured or read off. */
            points: components["schemas"]["SystemPointInput"][];
        };
        /** @description A point of a system curve. */
        SystemPointInput: {
            /**
             * @description Total flow. [L/h; gal/h with `units=us`]
             * @example 8000
             */
            flow: number | string;
            /**
             * @description Head that the loop needs for it. [m; ft with `units=us`]
             * @example 2.1
             */
            head: number | string;
        };
        /** @description Where a fixed share of the flow leaves a loop known by its system curve. */
        ShareOutletInput: {
            /**
             * @description Names the outlet within its loop.
             * @example far end
             */
            name: string;
            /**
             * @description The fraction of the total flow that it gets.
             * @example 0.4
             */
            share: number;
            /**
             * @description The flow that the outlet needs at least; 0 is shut when flows are trimmed. [L/h; gal/h with `units=us`]
             * @example 3000
             */
            requiredFlow?: number | string;
            /**
             * @description The flow that the outlet may get at most. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            maximumFlow?: number | string;
        };
        /** @description A loop by its pipework. */
        PipeworkLoopInput: {
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water?: components["schemas"]["WaterInput"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @default 0
             * @example -0.6
             */
            pumpElevation?: number | string;
            tank?: components["schemas"]["TankInput"];
            intake?: components["schemas"]["IntakeInput"];
            basin?: components["schemas"]["BasinInput"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number | string;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number | string;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @default 1
             * @example 1
             */
            frictionMultiplier?: number;
            installed?: components["schemas"]["InstalledPumpInput"];
            /**
             * @description Rise from the surface drawn from to the surface delivered to. [m; ft with `units=us`]
             * @default 0
             * @example 0
             */
            staticHead?: number | string;
            /**
             * @description What the water passes from intake to pump.
             * @default []
             */
            suction?: components["schemas"]["RunElementInput"][];
            discharge: components["schemas"]["BranchInput"];
        };
        /** @description A part of a run; it acts on the flow of its run. */
        RunElementInput: components["schemas"]["PipeInput"] | components["schemas"]["FittingInput"] | components["schemas"]["ValveInput"] | components["schemas"]["LossByCoefficientInput"] | components["schemas"]["LossByLengthInput"] | components["schemas"]["LossByPointInput"];
        /** @description A length of pipe. */
        PipeInput: {
            pipe: string | components["schemas"]["PipeBoreInput"];
            /**
             * @description The length of the pipe. [m; ft with `units=us`]
             * @example 2.5
             */
            length: number | string;
        };
        /** @description A pipe that is not a standard size; its roughness is 0.0015 mm where it is not stated. */
        PipeBoreInput: {
            /**
             * @description The mean bore. [mm; in with `units=us`]
             * @example 40.4
             */
            insideDiameter: number | string;
            /**
             * @description Absolute roughness of the wall; 0.0015 mm where it is not stated. [mm; in with `units=us`]
             * @example 0.0015
             */
            roughness?: number | string;
        };
        /** @description One or more equal fittings. */
        FittingInput: {
            /**
             * @description A fitting of the reference table.
             * @example elbow-90
             */
            fitting: string;
            /**
             * @description How many of them; 1 where it is not stated.
             * @example 2
             */
            count?: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number | string;
        };
        /** @description A valve. */
        ValveInput: {
            valve: string | components["schemas"]["ValveByKvInput"] | components["schemas"]["ValveByCvInput"];
            /**
             * @description How far it is open; fully where it is not stated. [%]
             * @example 100
             */
            opening?: number | string;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number | string;
        };
        /** @description A valve known by its metric flow coefficient. */
        ValveByKvInput: {
            /**
             * @description Flow in m3/h at 1 bar, fully open.
             * @example 25
             */
            kv: number;
        };
        /** @description A valve known by its US flow coefficient. */
        ValveByCvInput: {
            /**
             * @description Flow in US gal/min at 1 psi, fully open.
             * @example 25
             */
            cv: number;
        };
        /** @description A loss by its coefficient. */
        LossByCoefficientInput: {
            /**
             * @description K of head = K v^2/2g.
             * @example 2
             */
            lossCoefficient: number;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number | string;
        };
        /** @description A loss by the length of pipe that loses as much. */
        LossByLengthInput: {
            /**
             * @description The length of straight pipe that loses as much. [m; ft with `units=us`]
             * @example 1.2
             */
            equivalentLength: number | string;
            /**
             * @description The bore that the element's velocity is taken in; without it that of the nearest pipe. [mm; in with `units=us`]
             * @example 40.4
             */
            diameter?: number | string;
            /**
             * @description Absolute roughness of the wall; 0.0015 mm where it is not stated. [mm; in with `units=us`]
             * @example 0.0015
             */
            roughness?: number | string;
        };
        /** @description A loss that grows with the square of the flow, through one point. */
        LossByPointInput: {
            loss: components["schemas"]["LossPointInput"];
        };
        /** @description One point of a quadratic loss. */
        LossPointInput: {
            /**
             * @description Head lost at the flow. [m; ft with `units=us`]
             * @example 0.6
             */
            head: number | string;
            /**
             * @description The flow at which it was noted. [L/h; gal/h with `units=us`]
             * @example 5000
             */
            flow: number | string;
        };
        /** @description A run that ends in an outlet or splits into branches. */
        BranchInput: {
            /** @description What the water passes, in order. */
            run: components["schemas"]["RunElementInput"][];
            outlet?: components["schemas"]["OutletInput"];
            branches?: components["schemas"]["BranchInput"][];
            /**
             * @description Side branches lose what an equal 90 degree tee costs, the first branch being the straight run; no split loss without it.
             * @example tee-90
             * @enum {string}
             */
            split?: "tee-90";
        };
        /** @description Where water leaves a loop of pipework. */
        OutletInput: {
            /**
             * @description Names the outlet within its loop.
             * @example far end
             */
            name: string;
            /**
             * @description The flow that the outlet needs at least; 0 is shut when flows are trimmed. [L/h; gal/h with `units=us`]
             * @example 3000
             */
            requiredFlow?: number | string;
            /**
             * @description The flow that the outlet may get at most. [L/h; gal/h with `units=us`]
             * @example 6000
             */
            maximumFlow?: number | string;
            reach?: components["schemas"]["ReachInput"];
            /**
             * @description The bore of a nozzle at the end; without it that of the last pipe. [mm; in with `units=us`]
             * @example 15
             */
            nozzleDiameter?: number | string;
            /**
             * @description How many equal nozzles share the flow; 1 where it is not stated.
             * @example 1
             */
            nozzleCount?: number;
            /**
             * @description K of the whole exit loss on the nozzle or the last pipe; 1 where it is not stated.
             * @example 1
             */
            lossCoefficient?: number;
            /**
             * @description Rise to this outlet's surface above that of the loop. [m; ft with `units=us`]
             * @example 0.2
             */
            staticHead?: number | string;
        };
        /** @description What the stream of an outlet must still do far away. */
        ReachInput: {
            /**
             * @description How far away, on the jet's axis. [m; ft with `units=us`]
             * @example 2.5
             */
            distance: number | string;
            /**
             * @description How fast the water must still move there. [m/s; ft/s with `units=us`]
             * @example 0.1
             */
            velocity: number | string;
        };
        /** @description A page of a list. */
        LoopList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["LoopItem"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A stored loop in a list. */
        LoopItem: components["schemas"]["SystemCurveLoopItem"] | components["schemas"]["PipeworkLoopItem"];
        /** @description A loop whose pipework is not known, by its system curve. */
        SystemCurveLoopItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water: components["schemas"]["Water"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @example -0.6
             */
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @example 1
             */
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            systemCurve: components["schemas"]["SystemCurve"];
            /** @description Where the flow leaves, in shares that add up to 1. */
            outlets: components["schemas"]["ShareOutlet"][];
        };
        /** @description A loop by its pipework. */
        PipeworkLoopItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Kelp flume
             */
            name: string;
            water: components["schemas"]["Water"];
            /**
             * @description The pump's centreline above the surface drawn from; negative is flooded. [m; ft with `units=us`]
             * @example -0.6
             */
            pumpElevation: number;
            tank?: components["schemas"]["Tank"];
            intake?: components["schemas"]["Intake"];
            basin?: components["schemas"]["Basin"];
            /**
             * @description How far below the tank's surface air breaks the siphon of the return when the pump stops; the tank drains back to there. [m; ft with `units=us`]
             * @example 0.05
             */
            siphonBreakDepth?: number;
            /**
             * @description What the overflow of the tank carries. [L/h; gal/h with `units=us`]
             * @example 15000
             */
            overflowCapacity?: number;
            /**
             * @description Multiplies the loss of every run element, of splits and of a system curve.
             * @example 1
             */
            frictionMultiplier: number;
            installed?: components["schemas"]["InstalledPump"];
            /**
             * @description Rise from the surface drawn from to the surface delivered to. [m; ft with `units=us`]
             * @example 0
             */
            staticHead: number;
            /** @description What the water passes from intake to pump. */
            suction: components["schemas"]["RunElement"][];
            discharge: components["schemas"]["Branch"];
        };
        /** @description The system curve of a loop, whatever the pump. */
        SystemCurveTable: {
            /** @description By rising flow. */
            points: {
                /**
                 * @description Total flow. [L/h; gal/h with `units=us`]
                 * @example 7500
                 */
                flow: number;
                /**
                 * @description Head needed, suction losses included. [m; ft with `units=us`]
                 * @example 1.55784
                 */
                head: number;
                /** @description What each outlet gets of it. */
                outlets: {
                    /**
                     * @description Name of the outlet.
                     * @example far end
                     */
                    name: string;
                    /**
                     * @description What it gets. [L/h; gal/h with `units=us`]
                     * @example 3015.1
                     */
                    flow: number;
                }[];
            }[];
            requiredDuty: {
                /**
                 * @description Least total flow that serves every outlet. [L/h; gal/h with `units=us`]
                 * @example 7462.52
                 */
                flow: number;
                /**
                 * @description Head that it needs. [m; ft with `units=us`]
                 * @example 1.54263
                 */
                head: number;
                /**
                 * @description The outlet served last.
                 * @example far end
                 */
                limitingOutlet: string;
            } | null;
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description The duty of one pump at one setting on the loop. */
        DutyPoint: {
            /**
             * @description Place of the candidate in the request, from 0.
             * @example 0
             */
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            /**
             * @description Equal pumps in parallel.
             * @example 1
             */
            count: number;
            /**
             * @description What to dial on the controller [% of full].
             * @example 70
             */
            setting: number;
            /**
             * @description True speed at that setting [% of full].
             * @example 70
             */
            speed: number;
            /**
             * @description Total flow. [L/h; gal/h with `units=us`]
             * @example 7533.14
             */
            flow: number;
            /**
             * @description Head of the pump at the duty. [m; ft with `units=us`]
             * @example 1.5714
             */
            head: number;
            /**
             * @description Electrical power of all its pumps, standby included. [W]
             * @example 85.7042
             */
            power: number;
            /**
             * @description Wire to water: rho g Q H / P, a fraction.
             * @example 0.385034
             */
            efficiency: number;
            turnover: number | null;
            /**
             * @description Energy of a year. [kWh]
             * @example 750.769
             */
            annualEnergy: number;
            annualCost: number | null;
            lifeCycleCost: number | null;
            /**
             * @description The outlet with the least margin; null where none requires a flow.
             * @example far end
             */
            limitingOutlet: string | null;
            /** @description What each outlet gets. */
            outlets: {
                /**
                 * @description Name of the outlet.
                 * @example far end
                 */
                name: string;
                /**
                 * @description What it gets; negative: backwards. [L/h; gal/h with `units=us`]
                 * @example 3028.46
                 */
                flow: number;
                requiredFlow: number | null;
                margin: number | null;
                velocity: number | null;
                /** @description How far its stream reaches; null without a velocity, or where its bore is not known. */
                reach: {
                    /**
                     * @description Down to this velocity on the axis: the one asked for, else that of its stated reach. [m/s; ft/s with `units=us`]
                     * @example 0.1
                     */
                    velocity: number;
                    /**
                     * @description So far the stream reaches; 0 where it leaves slower. [m; ft with `units=us`]
                     * @example 4.28443
                     */
                    distance: number;
                } | null;
            }[];
            /** @description The throttling that `trimmed` supposes; empty as built. */
            trims: {
                /**
                 * @description The branch that is throttled, as a JSON pointer into the loop.
                 * @example /discharge/branches/1
                 */
                branch: string;
                /**
                 * @description The outlets that it feeds.
                 * @example [
                 *       "left",
                 *       "right"
                 *     ]
                 */
                outlets: string[];
                /**
                 * @description Shut altogether, because nothing beyond it requires a flow.
                 * @example false
                 */
                closed: boolean;
                /**
                 * @description Flow at which the trim is set. [L/h; gal/h with `units=us`]
                 * @example 4000
                 */
                flow: number;
                head: number | null;
                lossCoefficient: number | null;
                diameter: number | null;
                kv: number | null;
                /**
                 * @description The valve of the branch that can make the trim, as a JSON pointer into the loop; null where it has none of known characteristic.
                 * @example /discharge/branches/1/run/1
                 */
                valve: string | null;
                opening: number | null;
            }[];
            perPump: {
                /**
                 * @description Flow of one of the pumps. [L/h; gal/h with `units=us`]
                 * @example 7533.14
                 */
                flow: number;
                /**
                 * @description Power of one of the pumps. [W]
                 * @example 85.7042
                 */
                power: number;
            };
            /**
             * @description The same setting with one of the pumps at rest; null for a single pump, or where none moves water. Without check valves the idle pump passes water backwards, H = k Q^2 through the point of its own curve with the greatest hydraulic power (common practice).
             * @example null
             */
            onePumpDown: {
                /**
                 * @description Whether each pump has a check valve, as the installed pump of the loop states; taken to where it does not.
                 * @example true
                 */
                checkValves: boolean;
                /**
                 * @description Whether every outlet still gets what it needs.
                 * @example false
                 */
                served: boolean;
                /**
                 * @description What reaches the outlets together. [L/h; gal/h with `units=us`]
                 * @example 5400
                 */
                flow: number;
                /**
                 * @description What runs back through the pump that stands still; 0 with check valves. [L/h; gal/h with `units=us`]
                 * @example 0
                 */
                backflow: number;
                /**
                 * @description Electrical power of the pumps that still run. [W]
                 * @example 88
                 */
                power: number;
                /** @description What each outlet gets. */
                outlets: {
                    /**
                     * @description Name of the outlet.
                     * @example far end
                     */
                    name: string;
                    /**
                     * @description What it still gets. [L/h; gal/h with `units=us`]
                     * @example 2210
                     */
                    flow: number;
                    requiredFlow: number | null;
                    margin: number | null;
                }[];
            } | null;
            /**
             * @description The least and the most at this setting when the pump differs from its points as far as its grade and their scatter about the fit leave open (one-sided 95 %); null where it has no grade and its points no scatter to tell.
             * @example null
             */
            doubt: {
                /**
                 * @description ISO 9906 grade taken: of the assurance asked for, else of the pump; null: the scatter of its points alone.
                 * @example 2B
                 */
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    /**
                     * @description Least total flow. [L/h; gal/h with `units=us`]
                     * @example 7310
                     */
                    low: number;
                    /**
                     * @description Greatest total flow. [L/h; gal/h with `units=us`]
                     * @example 7755
                     */
                    high: number;
                };
                power: {
                    /**
                     * @description Least power. [W]
                     * @example 85.7
                     */
                    low: number;
                    /**
                     * @description Greatest power. [W]
                     * @example 92.6
                     */
                    high: number;
                };
                annualEnergy: {
                    /**
                     * @description Least energy of a year. [kWh]
                     * @example 750
                     */
                    low: number;
                    /**
                     * @description Greatest energy of a year. [kWh]
                     * @example 811
                     */
                    high: number;
                };
            } | null;
            /** @description How fast water passes the openings of the intake screen; null without a screen. */
            screen: {
                /**
                 * @description Flow over the open area that clogging leaves. [m/s; ft/s with `units=us`]
                 * @example 0.126885
                 */
                meanVelocity: number;
                /**
                 * @description Through the busiest openings: of a cylinder those at its root, mean x y coth y with y = sqrt(2) x 0.6 x (one screen's unclogged open area)/(pi diameter^2/4); the mean for other shapes. [m/s; ft/s with `units=us`]
                 * @example 1.25588
                 */
                peakVelocity: number;
                /**
                 * @description Share of the openings taken as clogged.
                 * @example 0.5
                 */
                cloggedFraction: number;
            } | null;
            /** @description What the pump does to the temperature. */
            heat: {
                /**
                 * @description Heat into the water while the pump runs. [W]
                 * @example 66.1634
                 */
                power: number;
                /**
                 * @description Whether 0.8 stood in for the efficiency of a dry motor.
                 * @example false
                 */
                motorEfficiencyAssumed: boolean;
                dailyRise: number | null;
                annualEnergy: number | null;
                annualCost: number | null;
            };
            /** @description The pull of the one intake when something covers it; null where several screens share the flow, or no bore is known. */
            coveredIntake: {
                /**
                 * @description Suction at the covered intake, no water moving. [m; ft with `units=us`]
                 * @example 2.49637
                 */
                suctionHead: number;
                /**
                 * @description Force on what covers it wholly [N].
                 * @example 751.5
                 */
                force: number;
            } | null;
            /** @description What to know about this duty. */
            cautions: components["schemas"]["Caution"][];
            /** @description Every crossing of pump and system curve, by rising flow; the duty is the stable one of least flow. */
            intersections: {
                /**
                 * @description Total flow of the crossing. [L/h; gal/h with `units=us`]
                 * @example 7533.14
                 */
                flow: number;
                /**
                 * @description Its head. [m; ft with `units=us`]
                 * @example 1.5714
                 */
                head: number;
                /**
                 * @description Whether a disturbed flow returns to it.
                 * @example true
                 */
                stable: boolean;
            }[];
            /** @description What a power cut lets back into the basin; null where `siphonBreakDepth` or the area of the tank is not entered. */
            drainBack: {
                /**
                 * @description What runs back: the tank down to the siphon break, and the discharge pipes. [L; gal with `units=us`]
                 * @example 341.2
                 */
                volume: number;
                room: number | null;
                /**
                 * @description Whether the volume is more than the room; null without a basin.
                 * @example true
                 */
                floods: boolean | null;
                deepestSiphonBreak: number | null;
            } | null;
            /**
             * @description The answer in one or two plain sentences.
             * @example Canister 250 at setting 70 % moves 7533 L/h at 1.571 m and draws 85.7 W.
             */
            summary: string;
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description Which pump. */
        PumpReference: {
            /**
             * @description Id of the pump; null where it came with the request.
             * @example 0198c0de-0000-7000-8000-000000000002
             */
            id: string | null;
            /**
             * @description Its name.
             * @example Canister 250
             */
            name: string;
        };
        /** @description A stored tariff. */
        Tariff: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Winter peak
             */
            name: string;
            /** @description Dates that are holidays, by the calendar of the site. */
            holidays: string[];
            /** @description Prices by time; the first that matches wins. */
            periods: components["schemas"]["TariffPeriod"][];
            otherwise: components["schemas"]["TariffRest"];
            /**
             * @description Money a day whatever is used; never part of what a loop costs.
             * @example 0.4
             */
            standingChargePerDay: number;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description When a price applies. */
        TariffPeriod: {
            /**
             * @description A name, 1 to 120 characters.
             * @example peak
             */
            name: string;
            /**
             * @description Money per kWh; negative where feeding in is paid.
             * @example 0.32
             */
            price: number;
            /**
             * @description Months in which it applies, 1 to 12; all where it is left out.
             * @example [
             *       1,
             *       2,
             *       11,
             *       12
             *     ]
             */
            months?: number[];
            /**
             * @description Days on which it applies; all where it is left out. A date of `holidays` is a holiday and no weekday.
             * @example [
             *       "mon",
             *       "tue",
             *       "wed",
             *       "thu",
             *       "fri"
             *     ]
             */
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            /**
             * @description Wall clock at which it begins each day; with `to`, or neither for the whole day. From an evening to a morning each instant counts by its own date.
             * @example 17:00
             */
            from?: string;
            /**
             * @description Wall clock at which it ends; 00:00 is the end of the day.
             * @example 21:00
             */
            to?: string;
        };
        /** @description The price at all other times. */
        TariffRest: {
            /**
             * @description A name, 1 to 120 characters.
             * @example base
             */
            name: string;
            /**
             * @description Money per kWh; negative where feeding in is paid.
             * @example 0.32
             */
            price: number;
        };
        /** @description Prices by the wall clock of the site. */
        TariffInput: {
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Winter peak
             */
            name: string;
            /**
             * @description Dates that are holidays, by the calendar of the site.
             * @default []
             */
            holidays?: string[];
            /**
             * @description Prices by time; the first that matches wins.
             * @default []
             */
            periods?: components["schemas"]["TariffPeriodInput"][];
            otherwise: components["schemas"]["TariffRestInput"];
            /**
             * @description Money a day whatever is used; never part of what a loop costs.
             * @default 0
             * @example 0.4
             */
            standingChargePerDay?: number;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description When a price applies. */
        TariffPeriodInput: {
            /**
             * @description A name, 1 to 120 characters.
             * @example peak
             */
            name: string;
            /**
             * @description Money per kWh; negative where feeding in is paid.
             * @example 0.32
             */
            price: number;
            /**
             * @description Months in which it applies, 1 to 12; all where it is left out.
             * @example [
             *       1,
             *       2,
             *       11,
             *       12
             *     ]
             */
            months?: number[];
            /**
             * @description Days on which it applies; all where it is left out. A date of `holidays` is a holiday and no weekday.
             * @example [
             *       "mon",
             *       "tue",
             *       "wed",
             *       "thu",
             *       "fri"
             *     ]
             */
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            /**
             * @description Wall clock at which it begins each day; with `to`, or neither for the whole day. From an evening to a morning each instant counts by its own date.
             * @example 17:00
             */
            from?: string;
            /**
             * @description Wall clock at which it ends; 00:00 is the end of the day.
             * @example 21:00
             */
            to?: string;
        };
        /** @description The price at all other times. */
        TariffRestInput: {
            /**
             * @description A name, 1 to 120 characters.
             * @example base
             */
            name: string;
            /**
             * @description Money per kWh; negative where feeding in is paid.
             * @example 0.32
             */
            price: number;
        };
        /** @description A page of a list. */
        TariffList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["TariffItem"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A stored tariff in a list. */
        TariffItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example Winter peak
             */
            name: string;
            /** @description Dates that are holidays, by the calendar of the site. */
            holidays: string[];
            /** @description Prices by time; the first that matches wins. */
            periods: components["schemas"]["TariffPeriod"][];
            otherwise: components["schemas"]["TariffRest"];
            /**
             * @description Money a day whatever is used; never part of what a loop costs.
             * @example 0.4
             */
            standingChargePerDay: number;
        };
        /** @description The phases of a loop, the settings that serve them, and what they use in a year. */
        Schedule: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of a tariff; null: the tariff or the price of the site.
             * @example 0198f1c2
             */
            tariff: string | null;
            /** @description In the order of entry. */
            phases: components["schemas"]["ScheduledPhase"][];
            emergency?: components["schemas"]["EmergencyRunning"];
            /**
             * @description The year of the calendar that the figures are of.
             * @example 2026
             */
            year: number;
            /**
             * @description Its hours in the zone of the site.
             * @example 8760
             */
            hoursPerYear: number;
            /**
             * @description Of every sum of money.
             * @example EUR
             */
            currency: string;
            /**
             * @description Energy of the year. [kWh]
             * @example 178.2
             */
            annualEnergy: number;
            annualCost: number | null;
            against: {
                constantHighest: components["schemas"]["ConstantRunning"];
                installed: components["schemas"]["ConstantRunning"];
            };
            fallback: components["schemas"]["Fallback"];
            /**
             * @description The answer in one or two plain sentences.
             * @example 2 phases use 512 kWh in 2026, which costs 107 EUR.
             */
            summary: string;
            /** @description What to know about the loop and the phases. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A phase with the setting that serves it, and what it uses in a year. */
        ScheduledPhase: {
            /**
             * @description A name, 1 to 120 characters.
             * @example night
             */
            name: string;
            /**
             * @description Wall clock of the site at which it begins; it runs to the next phase's start. A time that clocks skip acts at the first instant after, one that they show twice at the first.
             * @example 22:00
             */
            from: string;
            /**
             * @description Days on which it begins; all where it is left out. A holiday of the tariff is a holiday and no weekday.
             * @example [
             *       "mon",
             *       "tue",
             *       "wed",
             *       "thu",
             *       "fri"
             *     ]
             */
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            /**
             * @description Times the flow that each outlet of the loop requires.
             * @example 0.6
             */
            factor?: number;
            /** @description Required flows by outlet, in place of those of the loop; outlets that are not named keep their own. */
            requiredFlows?: {
                [key: string]: number;
            };
            volume?: components["schemas"]["VolumeDemand"];
            /** @description Outlets shut in this phase, by 0; 100 is as built. What is shut requires nothing. */
            openings?: {
                [key: string]: number;
            };
            /**
             * @description Minutes in which the setting runs from that of the phase before to this phase's.
             * @example 10
             */
            rampMinutes?: number;
            pulse?: components["schemas"]["Pulse"];
            /**
             * @description What to dial [% of full]; for a volume the setting that is run for longest, 0 being stopped.
             * @example 58
             */
            setting: number;
            /**
             * @description False: no setting serves, and this is the highest inside the pump's own limits.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Mean over the time of the phase in the year; ramps, pulses and splits averaged over time. [W]
             * @example 51.3
             */
            power: number;
            /**
             * @description Mean of the total flow. [L/h; gal/h with `units=us`]
             * @example 6240
             */
            flow: number;
            /**
             * @description Hours of the phase in the year.
             * @example 3285
             */
            hoursPerYear: number;
            /**
             * @description Energy of the year. [kWh]
             * @example 178.2
             */
            annualEnergy: number;
            annualCost: number | null;
            /** @description What each outlet gets. */
            outlets: components["schemas"]["ServedOutlet"][];
            otherSetting: number | null;
            gap: number | null;
        };
        /** @description A volume to move at the least cost, whatever the flow by the hour. */
        VolumeDemand: {
            /**
             * @description Volume to move in each run of the phase, a day long at most. [L; gal with `units=us`]
             * @example 120000
             */
            perDay: number;
            /**
             * @description Total flow at least, unless stopped. [L/h; gal/h with `units=us`]
             * @example 2000
             */
            floor?: number;
            /**
             * @description Total flow at most. [L/h; gal/h with `units=us`]
             * @example 9000
             */
            ceiling?: number;
            /**
             * @description Whether the pump may be stopped for hours.
             * @example false
             */
            mayStop: boolean;
            /**
             * @description Whether an hour may be shared in time by two settings.
             * @example true
             */
            splits: boolean;
        };
        /** @description Two flows in turn. */
        Pulse: {
            /**
             * @description Times the flows that the loop requires, or the phase's `requiredFlows`, in the other part of each period.
             * @example 0.4
             */
            otherFactor: number;
            /**
             * @description Minutes of one period of both parts.
             * @example 15
             */
            periodMinutes: number;
            /**
             * @description Share of each period at `otherFactor`; the phase itself has the first part.
             * @example 0.5
             */
            share: number;
        };
        /** @description An outlet in a phase. */
        ServedOutlet: {
            /**
             * @description Name of the outlet.
             * @example far end
             */
            name: string;
            /**
             * @description What it gets; negative: backwards. [L/h; gal/h with `units=us`]
             * @example 1814.2
             */
            flow: number;
            requiredFlow: number | null;
            margin: number | null;
            velocity: number | null;
        };
        /** @description What must go on when the mains fail, and for how long it can. */
        EmergencyRunning: {
            /**
             * @description Times the required flows that keep the animals alive.
             * @example 0.3
             */
            factor: number;
            /**
             * @description What a battery gives to the pump. [kWh]
             * @example 1.2
             */
            batteryEnergy?: number;
            /**
             * @description The lowest setting that gives these flows [% of full].
             * @example 32
             */
            setting: number;
            /**
             * @description False: no setting serves, and this is the highest inside the pump's own limits.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Power at it. [W]
             * @example 14.2
             */
            power: number;
            /**
             * @description Total flow at it. [L/h; gal/h with `units=us`]
             * @example 2450
             */
            flow: number;
            /** @description What each outlet gets. */
            outlets: components["schemas"]["ServedOutlet"][];
            batteryHours: number | null;
        };
        /** @description One setting round the clock, for comparison. */
        ConstantRunning: {
            /**
             * @description The setting, round the clock [% of full].
             * @example 70
             */
            setting: number;
            /**
             * @description Power at it. [W]
             * @example 85.7042
             */
            power: number;
            /**
             * @description Total flow at it. [L/h; gal/h with `units=us`]
             * @example 7533.14
             */
            flow: number;
            /**
             * @description Energy of the year. [kWh]
             * @example 178.2
             */
            annualEnergy: number;
            annualCost: number | null;
            /**
             * @description What the schedule uses less in the year. [kWh]
             * @example 112.5
             */
            savedEnergy: number;
            savedCost: number | null;
        };
        /** @description What to set while the service is away. */
        Fallback: {
            /**
             * @description One setting that serves every phase [% of full].
             * @example 70
             */
            setting: number;
        };
        /** @description The phases of a loop as their user enters them. */
        ScheduleInput: {
            /**
             * @description Id of a tariff; null: the tariff or the price of the site.
             * @default null
             * @example 0198f1c2
             */
            tariff?: string | null;
            /** @description The phases of the day, in any order. */
            phases: components["schemas"]["PhaseInput"][];
            emergency?: components["schemas"]["EmergencyInput"];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
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
        /** @description A part of the day, by exactly one of `factor`, `requiredFlows` and `volume`. */
        PhaseInput: {
            /**
             * @description A name, 1 to 120 characters.
             * @example night
             */
            name: string;
            /**
             * @description Wall clock of the site at which it begins; it runs to the next phase's start. A time that clocks skip acts at the first instant after, one that they show twice at the first.
             * @example 22:00
             */
            from: string;
            /**
             * @description Days on which it begins; all where it is left out. A holiday of the tariff is a holiday and no weekday.
             * @example [
             *       "mon",
             *       "tue",
             *       "wed",
             *       "thu",
             *       "fri"
             *     ]
             */
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            /**
             * @description Times the flow that each outlet of the loop requires.
             * @example 0.6
             */
            factor?: number;
            /** @description Required flows by outlet, in place of those of the loop; outlets that are not named keep their own. */
            requiredFlows?: {
                [key: string]: number | string;
            };
            volume?: components["schemas"]["VolumeDemandInput"];
            /** @description Outlets shut in this phase, by 0; 100 is as built. What is shut requires nothing. */
            openings?: {
                [key: string]: number | string;
            };
            /**
             * @description Minutes in which the setting runs from that of the phase before to this phase's.
             * @example 10
             */
            rampMinutes?: number;
            pulse?: components["schemas"]["PulseInput"];
            setting?: unknown;
            feasible?: unknown;
            power?: unknown;
            flow?: unknown;
            hoursPerYear?: unknown;
            annualEnergy?: unknown;
            annualCost?: unknown;
            outlets?: unknown;
            otherSetting?: unknown;
            gap?: unknown;
        };
        /** @description A volume to move at the least cost, whatever the flow by the hour. */
        VolumeDemandInput: {
            /**
             * @description Volume to move in each run of the phase, a day long at most. [L; gal with `units=us`]
             * @example 120000
             */
            perDay: number | string;
            /**
             * @description Total flow at least, unless stopped. [L/h; gal/h with `units=us`]
             * @example 2000
             */
            floor?: number | string;
            /**
             * @description Total flow at most. [L/h; gal/h with `units=us`]
             * @example 9000
             */
            ceiling?: number | string;
            /**
             * @description Whether the pump may be stopped for hours.
             * @default false
             * @example false
             */
            mayStop?: boolean;
            /**
             * @description Whether an hour may be shared in time by two settings.
             * @default true
             * @example true
             */
            splits?: boolean;
        };
        /** @description Two flows in turn. */
        PulseInput: {
            /**
             * @description Times the flows that the loop requires, or the phase's `requiredFlows`, in the other part of each period.
             * @example 0.4
             */
            otherFactor: number;
            /**
             * @description Minutes of one period of both parts.
             * @example 15
             */
            periodMinutes: number;
            /**
             * @description Share of each period at `otherFactor`; the phase itself has the first part.
             * @example 0.5
             */
            share: number;
        };
        /** @description What must go on when the mains fail. */
        EmergencyInput: {
            /**
             * @description Times the required flows that keep the animals alive.
             * @example 0.3
             */
            factor: number;
            /**
             * @description What a battery gives to the pump. [kWh]
             * @example 1.2
             */
            batteryEnergy?: number | string;
            setting?: unknown;
            feasible?: unknown;
            power?: unknown;
            flow?: unknown;
            outlets?: unknown;
            batteryHours?: unknown;
        };
        /** @description What to set now, until when, and what to do if the service is away. */
        Setpoint: {
            /**
             * @description What to dial [% of full]; 0 is stopped.
             * @example 58
             */
            setting: number;
            /**
             * @description False: no setting serves, and this is the highest inside the pump's own limits.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Name of the phase; null without a schedule.
             * @example night
             */
            phase: string | null;
            /**
             * Format: date-time
             * @description Since when it holds, by the clocks of the site.
             * @example 2026-01-15T22:00:00.000+00:00
             */
            from: string;
            /**
             * Format: date-time
             * @description Until when it holds.
             * @example 2026-01-16T07:00:00.000+00:00
             */
            until: string;
            /**
             * @description Power at it. [W]
             * @example 51.3
             */
            power: number;
            /**
             * @description Total flow at it. [L/h; gal/h with `units=us`]
             * @example 6240
             */
            flow: number;
            /** @description What each outlet gets. */
            outlets: components["schemas"]["ServedOutlet"][];
            fallback: components["schemas"]["Fallback"];
            /**
             * @description The answer in one plain sentence.
             * @example Set 58 % until 07:00 (night).
             */
            summary: string;
            /** @description What to know about this setting. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description What to set in the next 24 hours. */
        Setpoints: {
            /** @description In order, without gaps. */
            items: components["schemas"]["SetpointStep"][];
            fallback: components["schemas"]["Fallback"];
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description What to set in a part of the day. */
        SetpointStep: {
            /**
             * @description What to dial [% of full]; 0 is stopped.
             * @example 58
             */
            setting: number;
            /**
             * @description False: no setting serves, and this is the highest inside the pump's own limits.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Name of the phase; null without a schedule.
             * @example night
             */
            phase: string | null;
            /**
             * Format: date-time
             * @description Since when it holds, by the clocks of the site.
             * @example 2026-01-15T22:00:00.000+00:00
             */
            from: string;
            /**
             * Format: date-time
             * @description Until when it holds.
             * @example 2026-01-16T07:00:00.000+00:00
             */
            until: string;
            /**
             * @description Power at it. [W]
             * @example 51.3
             */
            power: number;
            /**
             * @description Total flow at it. [L/h; gal/h with `units=us`]
             * @example 6240
             */
            flow: number;
        };
        /** @description What became of the readings. */
        ReadingsTaken: {
            /**
             * @description Readings of the request.
             * @example 2
             */
            accepted: number;
            /**
             * @description How many of them met a reading of the same instant, stored or earlier in the request: the fields they state took the place of its own, those they leave out stayed.
             * @example 0
             */
            merged: number;
        };
        /** @description Readings of a loop: all are stored, or none. */
        ReadingsInput: {
            /** @description One to 50000 readings; their times do not fall. */
            readings: components["schemas"]["ReadingInput"][];
        };
        /** @description What was measured on a loop at one moment; what was not measured is left out. */
        ReadingInput: {
            /**
             * Format: date-time
             * @description When it was measured; not in the future.
             * @example 2026-01-15T11:30:00.000Z
             */
            time: string;
            /**
             * @description What the pump was set to, 0 where it was stopped; else within the installed pump's settings. [%]
             * @example 80
             */
            setting: number | string;
            /**
             * @description Electrical power drawn by the pumps of the loop together. [W]
             * @example 118
             */
            power?: number | string;
            /**
             * @description Total flow. 0 while the pump runs only beside a head or a discharge pressure, which are then those of a shut valve. [L/h; gal/h with `units=us`]
             * @example 8200
             */
            flow?: number | string;
            /**
             * @description Flow of outlets by their names.
             * @example {
             *       "far end": 3100
             *     }
             */
            outletFlows?: {
                [key: string]: number | string;
            };
            /**
             * @description Head across the pump. [m; ft with `units=us`]
             * @example 2.1
             */
            head?: number | string;
            /**
             * @description Pressure just before the pump, at its level, above that of the air. [kPa; psi with `units=us`]
             * @example 2.4
             */
            suctionPressure?: number | string;
            /**
             * @description Pressure just behind the pump, at its level, above that of the air. [kPa; psi with `units=us`]
             * @example 23
             */
            dischargePressure?: number | string;
        };
        /** @description A page of readings. */
        ReadingList: {
            /** @description In the order of time: readings, or with `by` means of those of an hour or a day. */
            items: (components["schemas"]["Reading"] | components["schemas"]["MeanReading"])[];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description What was measured on a loop at one moment; what was not measured is left out. */
        Reading: {
            /**
             * Format: date-time
             * @description When it was measured; not in the future.
             * @example 2026-01-15T11:30:00.000Z
             */
            time: string;
            /**
             * @description What the pump was set to, 0 where it was stopped; else within the installed pump's settings. [%]
             * @example 80
             */
            setting: number;
            /**
             * @description Electrical power drawn by the pumps of the loop together. [W]
             * @example 118
             */
            power?: number;
            /**
             * @description Total flow. 0 while the pump runs only beside a head or a discharge pressure, which are then those of a shut valve. [L/h; gal/h with `units=us`]
             * @example 8200
             */
            flow?: number;
            /**
             * @description Flow of outlets by their names.
             * @example {
             *       "far end": 3100
             *     }
             */
            outletFlows?: {
                [key: string]: number;
            };
            /**
             * @description Head across the pump. [m; ft with `units=us`]
             * @example 2.1
             */
            head?: number;
            /**
             * @description Pressure just before the pump, at its level, above that of the air. [kPa; psi with `units=us`]
             * @example 2.4
             */
            suctionPressure?: number;
            /**
             * @description Pressure just behind the pump, at its level, above that of the air. [kPa; psi with `units=us`]
             * @example 23
             */
            dischargePressure?: number;
        };
        /** @description Means of the readings of an hour or a day. */
        MeanReading: {
            /**
             * Format: date-time
             * @description When the hour or day begins, in UTC.
             * @example 2026-01-15T00:00:00.000Z
             */
            from: string;
            /**
             * Format: date-time
             * @description When it ends.
             * @example 2026-01-16T00:00:00.000Z
             */
            until: string;
            /**
             * @description The day by the calendar of the site; null for an hour.
             * @example 2026-01-15
             */
            day: string | null;
            /**
             * @description How many there are in it.
             * @example 1440
             */
            readings: number;
            /**
             * @description Mean setting. [%]
             * @example 78.4
             */
            setting: number;
            power: number | null;
            flow: number | null;
            /** @description Mean flow of the outlets that were measured, by their names. */
            outletFlows: {
                [key: string]: number;
            };
            head: number | null;
            suctionPressure: number | null;
            dischargePressure: number | null;
        };
        /** @description What was measured on a loop against its data, what that means, what to expect. */
        Condition: {
            /**
             * @description The first that applies. `not-enough-readings`: under three of flow or power. `meter-doubtful`: see meterSlip. `draws-more-than-its-curve`: power up, flow not. Flow down: `clogged-intake` (suction pressure below that of the flow measured), `clogged-discharge` (discharge pressure above it), `worn-pump` (head below the curve at that flow), whichever is farthest over its threshold; without such pressures `clogged` where power is down too, else `less-flow`. `entries-doubtful`: flow up, or power far down. Else `as-expected`. See thresholds; a residual must also be two standard errors from 0.
             * @example clogged-intake
             * @enum {string}
             */
            verdict: "not-enough-readings" | "meter-doubtful" | "draws-more-than-its-curve" | "clogged-intake" | "clogged-discharge" | "worn-pump" | "clogged" | "less-flow" | "entries-doubtful" | "as-expected";
            /**
             * @description The answer in a few plain sentences.
             * @example Kelp flume: the loop does as its data say.
             */
            summary: string;
            /** @description One row for each thing that was measured at least three times. */
            evidence: components["schemas"]["Evidence"][];
            meterSlip: components["schemas"]["MeterSlip"] | null;
            shortfall: components["schemas"]["Shortfall"] | null;
            waiting: components["schemas"]["Waiting"] | null;
            /**
             * @description Whether predictions rest on the data as entered or on a calibration of the loop.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            /**
             * @description The first reading judged. Null without one.
             * @example 2026-01-15T10:00:00.000Z
             */
            from: string | null;
            /**
             * @description The last. Null without one.
             * @example 2026-01-15T10:00:00.000Z
             */
            to: string | null;
            readings: {
                /**
                 * @description Readings in the range.
                 * @example 365
                 */
                total: number;
                /**
                 * @description Those judged one by one: a sample, where there are over 20,000.
                 * @example 365
                 */
                judged: number;
                /**
                 * @description Those of a running pump with every valve open.
                 * @example 360
                 */
                used: number;
                leftOut: {
                    /**
                     * @description Left out because the pump was stopped.
                     * @example 5
                     */
                    stopped: number;
                    /**
                     * @description Left out because a valve was shut: a flow of 0 while the pump ran.
                     * @example 0
                     */
                    shutValve: number;
                    /**
                     * @description Left out for a setting that the installed pump does not have, or beyond the 200 most frequent.
                     * @example 0
                     */
                    otherSetting: number;
                };
            };
            thresholds: {
                /**
                 * @description Flow at a setting below its prediction by more than this is down.
                 * @example 0.05
                 */
                flowDown: number;
                /**
                 * @description Flow above by more than this is up, which no fault explains.
                 * @example 0.05
                 */
                flowUp: number;
                /**
                 * @description Power below by more than this, beside less flow, is down.
                 * @example 0.05
                 */
                powerDown: number;
                /**
                 * @description Power above by more than this is up.
                 * @example 0.05
                 */
                powerUp: number;
                /**
                 * @description Power below by more than this, beside the flow expected, is far down.
                 * @example 0.05
                 */
                powerFarDown: number;
                /**
                 * @description Suction pressure below that of the measured flow by this share of the head: clogged intake.
                 * @example 0.05
                 */
                suctionGap: number;
                /**
                 * @description Discharge pressure above that of the measured flow by this share: clogged discharge.
                 * @example 0.05
                 */
                dischargeGap: number;
                /**
                 * @description Head below the curve at the measured flow by this share: worn pump.
                 * @example 0.05
                 */
                pumpGap: number;
            };
            /** @description The residuals day by day with their trend, for a picture of them. */
            series: components["schemas"]["ResidualSeries"][];
            /** @description What to know before acting on it. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A measure against its prediction, and where it goes. */
        Evidence: {
            /**
             * @description What was measured.
             * @example flow
             * @enum {string}
             */
            measure: "flow" | "outletFlow";
            /**
             * @description The outlet of an outletFlow; else null.
             * @example null
             */
            outlet: string | null;
            /**
             * @description What the data give: the median over the last 30 days of readings. [L/h; gal/h with `units=us`]
             * @example 8420
             */
            predicted: number;
            /**
             * @description What was measured: the median over the same. [L/h; gal/h with `units=us`]
             * @example 7410
             */
            measured: number;
            /**
             * @description measured/predicted - 1, for a pressure (measured - predicted) as a share of the predicted head: the median over the same.
             * @example -0.12
             */
            residual: number;
            /**
             * @description Standard error of the residual, by the scatter of the readings.
             * @example 0.004
             */
            standardError: number;
            trendPerYear: number | null;
            interval: {
                /**
                 * @description Low end of the interval of 95 % of the trend, by Sen.
                 * @example -0.118
                 */
                low: number;
                /**
                 * @description High end.
                 * @example -0.102
                 */
                high: number;
            } | null;
            /**
             * @description Readings behind it.
             * @example 360
             */
            readings: number;
        } | {
            /**
             * @description What was measured.
             * @example power
             * @enum {string}
             */
            measure: "power";
            /**
             * @description The outlet of an outletFlow; else null.
             * @example null
             */
            outlet: string | null;
            /**
             * @description What the data give: the median over the last 30 days of readings. [W]
             * @example 121
             */
            predicted: number;
            /**
             * @description What was measured: the median over the same. [W]
             * @example 112
             */
            measured: number;
            /**
             * @description measured/predicted - 1, for a pressure (measured - predicted) as a share of the predicted head: the median over the same.
             * @example -0.12
             */
            residual: number;
            /**
             * @description Standard error of the residual, by the scatter of the readings.
             * @example 0.004
             */
            standardError: number;
            trendPerYear: number | null;
            interval: {
                /**
                 * @description Low end of the interval of 95 % of the trend, by Sen.
                 * @example -0.118
                 */
                low: number;
                /**
                 * @description High end.
                 * @example -0.102
                 */
                high: number;
            } | null;
            /**
             * @description Readings behind it.
             * @example 360
             */
            readings: number;
        } | {
            /**
             * @description What was measured.
             * @example head
             * @enum {string}
             */
            measure: "head";
            /**
             * @description The outlet of an outletFlow; else null.
             * @example null
             */
            outlet: string | null;
            /**
             * @description What the data give: the median over the last 30 days of readings. [m; ft with `units=us`]
             * @example 2.05
             */
            predicted: number;
            /**
             * @description What was measured: the median over the same. [m; ft with `units=us`]
             * @example 2.17
             */
            measured: number;
            /**
             * @description measured/predicted - 1, for a pressure (measured - predicted) as a share of the predicted head: the median over the same.
             * @example -0.12
             */
            residual: number;
            /**
             * @description Standard error of the residual, by the scatter of the readings.
             * @example 0.004
             */
            standardError: number;
            trendPerYear: number | null;
            interval: {
                /**
                 * @description Low end of the interval of 95 % of the trend, by Sen.
                 * @example -0.118
                 */
                low: number;
                /**
                 * @description High end.
                 * @example -0.102
                 */
                high: number;
            } | null;
            /**
             * @description Readings behind it.
             * @example 360
             */
            readings: number;
        } | {
            /**
             * @description What was measured.
             * @example suctionPressure
             * @enum {string}
             */
            measure: "suctionPressure" | "dischargePressure";
            /**
             * @description The outlet of an outletFlow; else null.
             * @example null
             */
            outlet: string | null;
            /**
             * @description What the data give: the median over the last 30 days of readings. [kPa; psi with `units=us`]
             * @example 3.6
             */
            predicted: number;
            /**
             * @description What was measured: the median over the same. [kPa; psi with `units=us`]
             * @example -1.2
             */
            measured: number;
            /**
             * @description measured/predicted - 1, for a pressure (measured - predicted) as a share of the predicted head: the median over the same.
             * @example -0.12
             */
            residual: number;
            /**
             * @description Standard error of the residual, by the scatter of the readings.
             * @example 0.004
             */
            standardError: number;
            trendPerYear: number | null;
            interval: {
                /**
                 * @description Low end of the interval of 95 % of the trend, by Sen.
                 * @example -0.118
                 */
                low: number;
                /**
                 * @description High end.
                 * @example -0.102
                 */
                high: number;
            } | null;
            /**
             * @description Readings behind it.
             * @example 360
             */
            readings: number;
        };
        /** @description Why a meter is doubted. */
        MeterSlip: {
            /**
             * @description The meter in doubt.
             * @example flow
             * @enum {string}
             */
            meter: "flow" | "power";
            /**
             * @description What was probably mistaken for what: a factor of 3.785, of 60, of 1000, or volt-amperes for watts; null where the figure is merely impossible.
             * @example gallons-and-litres
             */
            likely: ("gallons-and-litres" | "hours-and-minutes" | "watts-and-kilowatts" | "apparent-power") | null;
            factor: number | null;
        };
        /** @description The first outlet to fall short at the installed setting, if things go on as they do. */
        Shortfall: {
            /**
             * @description The outlet.
             * @example far end
             */
            outlet: string;
            /**
             * Format: date
             * @description When its flow meets the required flow on the way down, in UTC.
             * @example 2026-08-14
             */
            date: string;
            interval: {
                /**
                 * Format: date
                 * @description By the steep end of the interval of the trend.
                 * @example 2026-07-20
                 */
                earliest: string;
                latest: string | null;
            };
        };
        /** @description The cost of waiting; null without a price, or where no drift is told apart from none. */
        Waiting: {
            /**
             * @description Of every sum here.
             * @example EUR
             */
            currency: string;
            /**
             * @description What the flow by the data, won back by speed, costs a year now beyond what it cost by the data; pump at its installed setting round the clock, no static head.
             * @example 22
             */
            excessCost: number;
            /**
             * @description By how much that grows each year.
             * @example 61
             */
            growthPerYear: number;
            /**
             * @description What waiting another year costs: the excess and half of the growth.
             * @example 52.5
             */
            costOfAYear: number;
            cleaning: components["schemas"]["CheapestCleaning"] | null;
        };
        /** @description The cheapest interval of cleaning. */
        CheapestCleaning: {
            /**
             * @description What one cleaning costs.
             * @example 15
             */
            cost: number;
            /**
             * @description Where that comes from: the query, the check of kind screen-cleaning of the loop, or the service that the pump states.
             * @example maintenance-task
             * @enum {string}
             */
            source: "asked" | "maintenance-task" | "pump-service";
            /**
             * @description The interval at which cleanings and waste are cheapest together, sqrt(2 C/g) for a waste that grows by g a year each year; a shortfall may come sooner, and then decides.
             * @example 210
             */
            everyDays: number;
            /**
             * @description Cleanings and waste of a year at that interval, sqrt(2 C g).
             * @example 52
             */
            annualCost: number;
        };
        /** @description Daily residuals of a measure and the ends of their trend, null where there is none. */
        ResidualSeries: {
            /**
             * @description What was measured.
             * @example flow
             * @enum {string}
             */
            measure: "flow" | "power" | "head" | "suctionPressure" | "dischargePressure" | "outletFlow";
            /**
             * @description The outlet of an outletFlow; else null.
             * @example null
             */
            outlet: string | null;
            /** @description Medians of days, or where there are over 400 of some days together, in order. */
            points: {
                /**
                 * Format: date-time
                 * @description The instant, in UTC.
                 * @example 2026-01-15T10:00:00.000Z
                 */
                time: string;
                /**
                 * @description As in the evidence: a share of what is predicted.
                 * @example -0.08
                 */
                residual: number;
                /**
                 * @description Readings behind it.
                 * @example 24
                 */
                readings: number;
            }[];
            line: {
                from: {
                    /**
                     * Format: date-time
                     * @description The instant, in UTC.
                     * @example 2026-01-15T10:00:00.000Z
                     */
                    time: string;
                    /**
                     * @description As in the evidence: a share of what is predicted.
                     * @example -0.08
                     */
                    residual: number;
                };
                to: {
                    /**
                     * Format: date-time
                     * @description The instant, in UTC.
                     * @example 2026-01-15T10:00:00.000Z
                     */
                    time: string;
                    /**
                     * @description As in the evidence: a share of what is predicted.
                     * @example -0.08
                     */
                    residual: number;
                };
            } | null;
        };
        /** @description Factors that readings show, with their doubt. */
        Calibration: {
            /** @description Multipliers of what was entered: the friction of the loop, head and power of the pump, or `frictionOverHead` where the two are not told apart. Empty where the readings tell none. */
            parameters: {
                /**
                 * @description What it multiplies.
                 * @example frictionOverHead
                 * @enum {string}
                 */
                name: "friction" | "head" | "power" | "frictionOverHead";
                /**
                 * @description The multiplier.
                 * @example 1.32
                 */
                value: number;
                /**
                 * @description Its standard error.
                 * @example 0.042
                 */
                standardError: number;
                interval: {
                    /**
                     * @description Low end of the interval of 95 %.
                     * @example 1.24
                     */
                    low: number;
                    /**
                     * @description High end of it.
                     * @example 1.41
                     */
                    high: number;
                };
            }[];
            /** @description The factors that the readings do not tell, and why. */
            notIdentifiable: {
                /**
                 * @description The factor that the readings do not tell.
                 * @example head
                 * @enum {string}
                 */
                name: "friction" | "head" | "power";
                /**
                 * @description Why: nothing measured depends on it; flows alone tell friction over head; the rows do not tell the factors apart (`not-distinct`, `ill-conditioned`: condition number of the scaled Jacobian 1000 or more; `too-uncertain`: standard error 0.25 or more); only factors beyond all wear would fit (`implausible`).
                 * @example ratio-alone
                 * @enum {string}
                 */
                reason: "no-power-readings" | "no-flow-readings" | "ratio-alone" | "not-distinct" | "implausible" | "ill-conditioned" | "too-uncertain";
                /**
                 * @description The reason in words and figures.
                 * @example Flows on a loop without static head tell friction over head alone, whatever the settings.
                 */
                detail: string;
                conditionNumber: number | null;
                standardError: number | null;
                /**
                 * @description Readings that would help.
                 * @example [
                 *       "the head across the pump"
                 *     ]
                 */
                readings: string[];
            }[];
            /** @description The limiting margin and its doubt; null where no water passes. */
            limiting: {
                /**
                 * @description The outlet that is served last; null where none requires a flow.
                 * @example far end
                 */
                outlet: string | null;
                /**
                 * @description The installed setting, at which it is told [%].
                 * @example 80
                 */
                setting: number;
                margin: number | null;
                /** @description What the readings leave open of it; null where they say nothing about flows. */
                doubt: {
                    /**
                     * @description Standard error of the margin; of the relative total flow where no outlet requires one.
                     * @example 0.011
                     */
                    standardError: number;
                    /** @description Of the margin; null without a requirement. */
                    interval: {
                        /**
                         * @description Low end of the interval of 95 %.
                         * @example 0.098
                         */
                        low: number;
                        /**
                         * @description High end of it.
                         * @example 0.142
                         */
                        high: number;
                    } | null;
                } | null;
            } | null;
            /** @description Readings to take next, the one first that would leave the least standard error of the limiting margin. */
            nextReadings: {
                /**
                 * @description What to measure: the total flow, the flow of an outlet, the head across the pump, its power.
                 * @example head
                 * @enum {string}
                 */
                measure: "flow" | "outletFlow" | "head" | "power";
                /**
                 * @description At this setting [%].
                 * @example 80
                 */
                setting: number;
                /**
                 * @description Of an `outletFlow`; null else.
                 * @example null
                 */
                outlet: string | null;
                /**
                 * @description Outlets to shut meanwhile; entered with the reading as flows of 0.
                 * @example []
                 */
                shut: string[];
                /**
                 * @description Whether a valve at the pump is shut for some seconds, no longer; entered as a flow of 0 beside the head.
                 * @example true
                 */
                zeroFlow: boolean;
                /** @description What it would show, as far as is known. */
                predicted: {
                    flow: number | null;
                    head: number | null;
                    power: number | null;
                };
                /** @description What it would leave open of the limiting margin; null where it says nothing about flows. */
                margin: {
                    /**
                     * @description Standard error of the margin; of the relative total flow where no outlet requires one.
                     * @example 0.011
                     */
                    standardError: number;
                    /** @description Of the margin; null without a requirement. */
                    interval: {
                        /**
                         * @description Low end of the interval of 95 %.
                         * @example 0.098
                         */
                        low: number;
                        /**
                         * @description High end of it.
                         * @example 0.142
                         */
                        high: number;
                    } | null;
                } | null;
                /** @description What would be told with it, were it to show what is predicted. */
                parameters: {
                    /**
                     * @description What it multiplies.
                     * @example frictionOverHead
                     * @enum {string}
                     */
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    /**
                     * @description The multiplier.
                     * @example 1.32
                     */
                    value: number;
                    /**
                     * @description Its standard error.
                     * @example 0.042
                     */
                    standardError: number;
                    interval: {
                        /**
                         * @description Low end of the interval of 95 %.
                         * @example 1.24
                         */
                        low: number;
                        /**
                         * @description High end of it.
                         * @example 1.41
                         */
                        high: number;
                    };
                }[];
            }[];
            /** @description True speeds by heads read at several settings, r = sqrt(h(s)/h(max)) corrected for the friction of smooth pipes; null where gauge readings do not tell. */
            speedMap: {
                /** @description As the `speedMap` of the pump would be, from its lowest to its highest setting. */
                points: {
                    /**
                     * @description Setting [%].
                     * @example 50
                     */
                    setting: number;
                    /**
                     * @description True speed [% of full].
                     * @example 57.2
                     */
                    speed: number;
                    standardError: number | null;
                }[];
                /**
                 * @description Whether a speed differs from the one entered by over 1 % and twice its standard error.
                 * @example false
                 */
                differs: boolean;
            } | null;
            readings: {
                /**
                 * @description Readings that said something.
                 * @example 120
                 */
                used: number;
                /**
                 * @description Different measures at different settings that they make.
                 * @example 12
                 */
                rows: number;
                /** @description As asked; null: from the first on. */
                from: string | null;
                /**
                 * Format: date-time
                 * @description As asked, else now.
                 * @example 2026-04-01T00:00:00Z
                 */
                to: string;
            };
            /**
             * @description Whether the factors were put to use by this request.
             * @example false
             */
            applied: boolean;
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            /**
             * @description The answer in a few plain sentences.
             * @example Friction over head is 1.32 times as entered (1.24 to 1.41).
             */
            summary: string;
            /** @description What to know about it. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description Which readings are taken, and whether their factors are put to use. */
        CalibrationRequestInput: {
            /**
             * Format: date-time
             * @description Readings from this instant on are taken; all earlier ones where it is left out.
             * @example 2026-03-01T00:00:00Z
             */
            from?: string;
            /**
             * Format: date-time
             * @description Readings before this instant are taken; those until now where it is left out.
             * @example 2026-04-01T00:00:00Z
             */
            to?: string;
            /**
             * @description Whether the loop is computed with these factors from now on; needs the ETag of the loop in If-Match.
             * @default false
             * @example false
             */
            apply?: boolean;
        };
        /** @description The calibrations that were applied to a loop. */
        Calibrations: {
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            /** @description The latest first, at most 200. */
            items: {
                /**
                 * @description Place in the order of application.
                 * @example 1
                 */
                place: number;
                /**
                 * Format: date-time
                 * @description When it was applied.
                 * @example 2026-04-01T08:00:00.000Z
                 */
                appliedAt: string;
                /** @description When it was undone; null: it was not. */
                undoneAt: string | null;
                /**
                 * @description Whether the loop is computed with it; one lapses when what decides the flows of the loop changes.
                 * @example true
                 */
                inUse: boolean;
                factors: {
                    /**
                     * @description Of the friction of the loop.
                     * @example 1.32
                     */
                    friction: number;
                    /**
                     * @description Of the head of the pump.
                     * @example 1
                     */
                    head: number;
                    /**
                     * @description Of the power of the pump.
                     * @example 1.015
                     */
                    power: number;
                };
                /** @description As they were told. */
                parameters: {
                    /**
                     * @description What it multiplies.
                     * @example frictionOverHead
                     * @enum {string}
                     */
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    /**
                     * @description The multiplier.
                     * @example 1.32
                     */
                    value: number;
                    /**
                     * @description Its standard error.
                     * @example 0.042
                     */
                    standardError: number;
                    interval: {
                        /**
                         * @description Low end of the interval of 95 %.
                         * @example 1.24
                         */
                        low: number;
                        /**
                         * @description High end of it.
                         * @example 1.41
                         */
                        high: number;
                    };
                }[];
                /**
                 * Format: date-time
                 * @description Of the readings behind it.
                 * @example 2026-03-01T00:00:00.000Z
                 */
                from: string;
                /**
                 * Format: date-time
                 * @description Likewise.
                 * @example 2026-04-01T00:00:00.000Z
                 */
                to: string;
                /**
                 * @description How many said something.
                 * @example 120
                 */
                readings: number;
            }[];
        };
        /** @description Which pump at which setting serves the loop at the least cost. */
        Recommendation: {
            best: components["schemas"]["Duty"] | null;
            /** @description The cheapest candidates, each at its smallest setting that serves, cheapest first. */
            ranking: components["schemas"]["Duty"][];
            /** @description Candidates that serve at no setting, in the order of the request. */
            rejected: components["schemas"]["RejectedCandidate"][];
            counts: {
                /**
                 * @description Candidates judged.
                 * @example 2
                 */
                candidates: number;
                /**
                 * @description Those with a setting that serves.
                 * @example 1
                 */
                feasible: number;
                /**
                 * @description Those without.
                 * @example 1
                 */
                rejected: number;
            };
            requiredDuty: {
                /**
                 * @description Least total flow that serves every outlet. [L/h; gal/h with `units=us`]
                 * @example 7462.52
                 */
                flow: number;
                /**
                 * @description Head that it needs. [m; ft with `units=us`]
                 * @example 1.54263
                 */
                head: number;
                /**
                 * @description The outlet served last.
                 * @example far end
                 */
                limitingOutlet: string;
            } | null;
            /**
             * @description What the trims save: the best of the same request as built less the best trimmed. Null as built, and where one of the two serves at no setting.
             * @example null
             */
            againstAsBuilt: {
                /**
                 * @description Place of the best candidate as built in the request, from 0.
                 * @example 0
                 */
                candidate: number;
                pump: components["schemas"]["PumpReference"];
                /**
                 * @description Equal pumps in parallel.
                 * @example 1
                 */
                count: number;
                /**
                 * @description Its smallest setting that serves as built [% of full].
                 * @example 74
                 */
                setting: number;
                /**
                 * @description Energy of a year as built. [kWh]
                 * @example 881.2
                 */
                annualEnergy: number;
                annualCost: number | null;
                /**
                 * @description Energy that the trims save a year; negative where they cost more. [kWh]
                 * @example 130.4
                 */
                energySaving: number;
                costSaving: number | null;
            } | null;
            /**
             * @description What the assurance asked for costs a year; null where none is asked for.
             * @example null
             */
            assurance: {
                /** @description The best of the same request without the assurance; null where there is none. */
                without: {
                    /**
                     * @description Place of the best candidate without the assurance, from 0.
                     * @example 0
                     */
                    candidate: number;
                    pump: components["schemas"]["PumpReference"];
                    /**
                     * @description Equal pumps in parallel.
                     * @example 1
                     */
                    count: number;
                    /**
                     * @description Its smallest setting that serves as entered [% of full].
                     * @example 70
                     */
                    setting: number;
                    /**
                     * @description Energy of a year. [kWh]
                     * @example 750.769
                     */
                    annualEnergy: number;
                    annualCost: number | null;
                } | null;
                extraEnergy: number | null;
                extraCost: number | null;
                /** @description What `best` does at the bad end that it is assured against; null without a best. */
                badEnd: {
                    /**
                     * @description Total flow. [L/h; gal/h with `units=us`]
                     * @example 7470
                     */
                    flow: number;
                    /**
                     * @description Head of the pump. [m; ft with `units=us`]
                     * @example 1.545
                     */
                    head: number;
                    /**
                     * @description Power, that of the grade included. [W]
                     * @example 100.4
                     */
                    power: number;
                    /** @description What each outlet gets. */
                    outlets: {
                        /**
                         * @description Name of the outlet.
                         * @example far end
                         */
                        name: string;
                        /**
                         * @description What it gets there. [L/h; gal/h with `units=us`]
                         * @example 3004
                         */
                        flow: number;
                        requiredFlow: number | null;
                    }[];
                } | null;
            } | null;
            /**
             * @description With `detail: "losses"`, where the head of `best` goes; null without, without a best, and where no water moves.
             * @example null
             */
            losses: components["schemas"]["Losses"] | null;
            /** @description The choice that only the screen forbids, and as `screen` the least screen of the same kind that would allow it; null where the screen decides nothing. */
            withoutScreenLimit: {
                /**
                 * @description Place in the request, from 0.
                 * @example 0
                 */
                candidate: number;
                pump: components["schemas"]["PumpReference"];
                /**
                 * @description Equal pumps in parallel.
                 * @example 1
                 */
                count: number;
                /**
                 * @description The smallest setting at which all other conditions hold [%].
                 * @example 80
                 */
                setting: number;
                /**
                 * @description Total flow. [L/h; gal/h with `units=us`]
                 * @example 4620
                 */
                flow: number;
                /**
                 * @description Electrical power, standby included. [W]
                 * @example 62
                 */
                power: number;
                annualCost: number | null;
                /**
                 * @description Through the part-clogged openings of the screen as it is, on average. [m/s; ft/s with `units=us`]
                 * @example 0.1645
                 */
                meanVelocity: number;
                /**
                 * @description Through the busiest of them. [m/s; ft/s with `units=us`]
                 * @example 0.1645
                 */
                peakVelocity: number;
                screen: {
                    /**
                     * @description Least length of each screen. [m; ft with `units=us`]
                     * @example 0.1436
                     */
                    length: number;
                    /**
                     * @description How many equal screens.
                     * @example 1
                     */
                    count: number;
                } | null;
            } | null;
            /** @description What a power cut lets back into the basin; null where `siphonBreakDepth` or the area of the tank is not entered. */
            drainBack: {
                /**
                 * @description What runs back: the tank down to the siphon break, and the discharge pipes. [L; gal with `units=us`]
                 * @example 341.2
                 */
                volume: number;
                room: number | null;
                /**
                 * @description Whether the volume is more than the room; null without a basin.
                 * @example true
                 */
                floods: boolean | null;
                deepestSiphonBreak: number | null;
            } | null;
            assumptions: {
                price: number | null;
                tariff: {
                    /**
                     * @description Id of the tariff; null where it came with the request.
                     * @example 0198c0de-0000-7000-8000-000000000003
                     */
                    id: string | null;
                    /**
                     * @description Its name.
                     * @example Winter peak
                     */
                    name: string;
                    /**
                     * @description The year of the calendar that `price` is the time mean of.
                     * @example 2026
                     */
                    year: number;
                } | null;
                /**
                 * @description Of every sum of money.
                 * @example EUR
                 */
                currency: string;
                /**
                 * @description Hours a day at the setting, standby for the rest.
                 * @example 24
                 */
                hoursPerDay: number;
                /**
                 * @description Whether branches are throttled to their required flows.
                 * @example as-built
                 * @enum {string}
                 */
                balancing: "as-built" | "trimmed";
                /**
                 * @description What the ranking goes by.
                 * @example energy-cost
                 * @enum {string}
                 */
                objective: "energy-cost" | "life-cycle-cost";
                /** @description The terms of the life-cycle cost; null where the ranking goes by energy. */
                lifeCycle: {
                    /**
                     * @description Looked at.
                     * @example 10
                     */
                    years: number;
                    /**
                     * @description A fraction a year.
                     * @example 0
                     */
                    discountRate: number;
                    /**
                     * @description Of all but energy, a fraction a year.
                     * @example 0
                     */
                    inflation: number;
                    /**
                     * @description Of energy, a fraction a year.
                     * @example 0
                     */
                    energyInflation: number;
                    /**
                     * @description Money an hour.
                     * @example 30
                     */
                    labourRate: number;
                    /**
                     * @description Of work.
                     * @example 120
                     */
                    minutesPerFailure: number;
                } | null;
                /**
                 * @description What the settings were asked to serve under besides; null without.
                 * @example null
                 */
                assurance: {
                    /**
                     * @description ISO 9906 grade whose low end every pump shall still serve at, the scatter of its points about their fit included.
                     * @example 2B
                     * @enum {string}
                     */
                    grade: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
                } | {
                    /**
                     * @description Required flows are taken times (1 + margin).
                     * @example 0.1
                     */
                    margin: number;
                } | {
                    /**
                     * @description Friction is taken times this, on top of the loop's own frictionMultiplier.
                     * @example 1.3
                     */
                    frictionMultiplier: number;
                } | "calibration" | null;
                /** @description How the water is kept at its temperature; null where `heat` was not asked for. */
                heat: {
                    /**
                     * @description Heat moved over electricity.
                     * @example 3
                     */
                    cop: number;
                    /**
                     * @description Taken away by a chiller, or spared by a heater.
                     * @example cooling
                     * @enum {string}
                     */
                    mode: "cooling" | "heating";
                    /**
                     * @description Whether the ranking counts it.
                     * @example false
                     */
                    inRanking: boolean;
                } | null;
                limits: {
                    throughSlotVelocity: number | null;
                    /**
                     * @description Share of the slots taken as clogged.
                     * @example 0.5
                     */
                    cloggedFraction: number;
                    /**
                     * @description Which velocity of a screen rejects.
                     * @example mean
                     * @enum {string}
                     */
                    screenBasis: "mean" | "peak";
                    /**
                     * @description Velocity in a pipe that is cautioned. [m/s; ft/s with `units=us`]
                     * @example 1.5
                     */
                    pipeVelocity: number;
                    /**
                     * @description Wire-to-water efficiency above which points cannot be right.
                     * @example 0.85
                     */
                    efficiency: number;
                    /**
                     * @description Whether an unmet NPSH rejects.
                     * @example false
                     */
                    npsh: boolean;
                    /**
                     * @description Whether a duty beyond 1.1 times the largest entered flow is accepted.
                     * @example false
                     */
                    extrapolation: boolean;
                };
            };
            /**
             * @description The answer in one or two plain sentences.
             * @example Run Canister 250 at setting 70 %: 85.7 W, 751 kWh and 158 EUR a year.
             */
            summary: string;
            /** @description What to know about the loop, whatever the pump. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description What the figures rest on: points and pipework as entered, or multiplied besides by the factors of the calibration that is in use.
             * @example entered
             * @enum {string}
             */
            dataBasis: "entered" | "calibrated";
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A pump at its duty on a loop, with what it costs a year. */
        Duty: {
            /**
             * @description Place of the candidate in the request, from 0.
             * @example 0
             */
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            /**
             * @description Equal pumps in parallel.
             * @example 1
             */
            count: number;
            /**
             * @description What to dial on the controller [% of full].
             * @example 70
             */
            setting: number;
            /**
             * @description True speed at that setting [% of full].
             * @example 70
             */
            speed: number;
            /**
             * @description Total flow. [L/h; gal/h with `units=us`]
             * @example 7533.14
             */
            flow: number;
            /**
             * @description Head of the pump at the duty. [m; ft with `units=us`]
             * @example 1.5714
             */
            head: number;
            /**
             * @description Electrical power of all its pumps, standby included. [W]
             * @example 85.7042
             */
            power: number;
            /**
             * @description Wire to water: rho g Q H / P, a fraction.
             * @example 0.385034
             */
            efficiency: number;
            turnover: number | null;
            /**
             * @description Energy of a year. [kWh]
             * @example 750.769
             */
            annualEnergy: number;
            annualCost: number | null;
            lifeCycleCost: number | null;
            /**
             * @description The outlet with the least margin; null where none requires a flow.
             * @example far end
             */
            limitingOutlet: string | null;
            /** @description What each outlet gets. */
            outlets: {
                /**
                 * @description Name of the outlet.
                 * @example far end
                 */
                name: string;
                /**
                 * @description What it gets; negative: backwards. [L/h; gal/h with `units=us`]
                 * @example 3028.46
                 */
                flow: number;
                requiredFlow: number | null;
                margin: number | null;
                velocity: number | null;
                /** @description How far its stream reaches; null without a velocity, or where its bore is not known. */
                reach: {
                    /**
                     * @description Down to this velocity on the axis: the one asked for, else that of its stated reach. [m/s; ft/s with `units=us`]
                     * @example 0.1
                     */
                    velocity: number;
                    /**
                     * @description So far the stream reaches; 0 where it leaves slower. [m; ft with `units=us`]
                     * @example 4.28443
                     */
                    distance: number;
                } | null;
            }[];
            /** @description The throttling that `trimmed` supposes; empty as built. */
            trims: {
                /**
                 * @description The branch that is throttled, as a JSON pointer into the loop.
                 * @example /discharge/branches/1
                 */
                branch: string;
                /**
                 * @description The outlets that it feeds.
                 * @example [
                 *       "left",
                 *       "right"
                 *     ]
                 */
                outlets: string[];
                /**
                 * @description Shut altogether, because nothing beyond it requires a flow.
                 * @example false
                 */
                closed: boolean;
                /**
                 * @description Flow at which the trim is set. [L/h; gal/h with `units=us`]
                 * @example 4000
                 */
                flow: number;
                head: number | null;
                lossCoefficient: number | null;
                diameter: number | null;
                kv: number | null;
                /**
                 * @description The valve of the branch that can make the trim, as a JSON pointer into the loop; null where it has none of known characteristic.
                 * @example /discharge/branches/1/run/1
                 */
                valve: string | null;
                opening: number | null;
            }[];
            perPump: {
                /**
                 * @description Flow of one of the pumps. [L/h; gal/h with `units=us`]
                 * @example 7533.14
                 */
                flow: number;
                /**
                 * @description Power of one of the pumps. [W]
                 * @example 85.7042
                 */
                power: number;
            };
            /**
             * @description The same setting with one of the pumps at rest; null for a single pump, or where none moves water. Without check valves the idle pump passes water backwards, H = k Q^2 through the point of its own curve with the greatest hydraulic power (common practice).
             * @example null
             */
            onePumpDown: {
                /**
                 * @description Whether each pump has a check valve, as the installed pump of the loop states; taken to where it does not.
                 * @example true
                 */
                checkValves: boolean;
                /**
                 * @description Whether every outlet still gets what it needs.
                 * @example false
                 */
                served: boolean;
                /**
                 * @description What reaches the outlets together. [L/h; gal/h with `units=us`]
                 * @example 5400
                 */
                flow: number;
                /**
                 * @description What runs back through the pump that stands still; 0 with check valves. [L/h; gal/h with `units=us`]
                 * @example 0
                 */
                backflow: number;
                /**
                 * @description Electrical power of the pumps that still run. [W]
                 * @example 88
                 */
                power: number;
                /** @description What each outlet gets. */
                outlets: {
                    /**
                     * @description Name of the outlet.
                     * @example far end
                     */
                    name: string;
                    /**
                     * @description What it still gets. [L/h; gal/h with `units=us`]
                     * @example 2210
                     */
                    flow: number;
                    requiredFlow: number | null;
                    margin: number | null;
                }[];
            } | null;
            /**
             * @description The least and the most at this setting when the pump differs from its points as far as its grade and their scatter about the fit leave open (one-sided 95 %); null where it has no grade and its points no scatter to tell.
             * @example null
             */
            doubt: {
                /**
                 * @description ISO 9906 grade taken: of the assurance asked for, else of the pump; null: the scatter of its points alone.
                 * @example 2B
                 */
                grade: ("1B" | "1E" | "1U" | "2B" | "2U" | "3B") | null;
                flow: {
                    /**
                     * @description Least total flow. [L/h; gal/h with `units=us`]
                     * @example 7310
                     */
                    low: number;
                    /**
                     * @description Greatest total flow. [L/h; gal/h with `units=us`]
                     * @example 7755
                     */
                    high: number;
                };
                power: {
                    /**
                     * @description Least power. [W]
                     * @example 85.7
                     */
                    low: number;
                    /**
                     * @description Greatest power. [W]
                     * @example 92.6
                     */
                    high: number;
                };
                annualEnergy: {
                    /**
                     * @description Least energy of a year. [kWh]
                     * @example 750
                     */
                    low: number;
                    /**
                     * @description Greatest energy of a year. [kWh]
                     * @example 811
                     */
                    high: number;
                };
            } | null;
            /** @description How fast water passes the openings of the intake screen; null without a screen. */
            screen: {
                /**
                 * @description Flow over the open area that clogging leaves. [m/s; ft/s with `units=us`]
                 * @example 0.126885
                 */
                meanVelocity: number;
                /**
                 * @description Through the busiest openings: of a cylinder those at its root, mean x y coth y with y = sqrt(2) x 0.6 x (one screen's unclogged open area)/(pi diameter^2/4); the mean for other shapes. [m/s; ft/s with `units=us`]
                 * @example 1.25588
                 */
                peakVelocity: number;
                /**
                 * @description Share of the openings taken as clogged.
                 * @example 0.5
                 */
                cloggedFraction: number;
            } | null;
            /** @description What the pump does to the temperature. */
            heat: {
                /**
                 * @description Heat into the water while the pump runs. [W]
                 * @example 66.1634
                 */
                power: number;
                /**
                 * @description Whether 0.8 stood in for the efficiency of a dry motor.
                 * @example false
                 */
                motorEfficiencyAssumed: boolean;
                dailyRise: number | null;
                annualEnergy: number | null;
                annualCost: number | null;
            };
            /** @description The pull of the one intake when something covers it; null where several screens share the flow, or no bore is known. */
            coveredIntake: {
                /**
                 * @description Suction at the covered intake, no water moving. [m; ft with `units=us`]
                 * @example 2.49637
                 */
                suctionHead: number;
                /**
                 * @description Force on what covers it wholly [N].
                 * @example 751.5
                 */
                force: number;
            } | null;
            /** @description What to know about this duty. */
            cautions: components["schemas"]["Caution"][];
        };
        /** @description A candidate that no setting of its grid makes serve. */
        RejectedCandidate: {
            /**
             * @description Place in the request, from 0.
             * @example 1
             */
            candidate: number;
            pump: components["schemas"]["PumpReference"];
            /**
             * @description Equal pumps in parallel.
             * @example 1
             */
            count: number;
            /**
             * @description A condition that holds at no setting of the candidate; `no-setting`: each holds somewhere, all nowhere.
             * @example not-enough-head
             * @enum {string}
             */
            reason: "efficiency-impossible" | "not-enough-head" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting";
            /** @description All of them, in a fixed order. */
            reasons: ("efficiency-impossible" | "not-enough-head" | "outside-data" | "outlet-above-maximum" | "screen-velocity" | "pump-below-minimum" | "pump-above-maximum" | "npsh" | "no-setting")[];
            /**
             * @description The reason in figures.
             * @example far end gets at most 2590 L/h at setting 100 % of the 3000 L/h it needs.
             */
            detail: string;
            shortfall: {
                /**
                 * @description The outlet that falls short.
                 * @example far end
                 */
                outlet: string;
                /**
                 * @description Setting at which it comes nearest [%].
                 * @example 100
                 */
                setting: number;
                /**
                 * @description What it gets there. [L/h; gal/h with `units=us`]
                 * @example 2590
                 */
                flow: number;
                /**
                 * @description What it needs. [L/h; gal/h with `units=us`]
                 * @example 3000
                 */
                requiredFlow: number;
            } | null;
        };
        /** @description Where the head of the best candidate goes, and what that costs a year. */
        Losses: {
            /**
             * @description rho g Q H of the pump. [W]
             * @example 32.998
             */
            hydraulicPower: number;
            /** @description Every element, tee mouth, outlet and lift, from the intake on. */
            rows: {
                /**
                 * @description The element, or the branch of a lift, a trim or a tee mouth, as a JSON pointer into the loop.
                 * @example /discharge/run/0
                 */
                element: string;
                /**
                 * @description What it is.
                 * @example pipe
                 * @enum {string}
                 */
                kind: "intake" | "pipe" | "fitting" | "valve" | "loss" | "tee-mouth" | "trim" | "outlet" | "lift" | "system-curve";
                /**
                 * @description Its name in the tables, or that of the outlet; null where it has none.
                 * @example sch80 1-1/2
                 */
                name: string | null;
                bore: number | null;
                /**
                 * @description Flow through it; negative: backwards. [L/h; gal/h with `units=us`]
                 * @example 7533.14
                 */
                flow: number;
                /**
                 * @description Head that it takes from that flow. [m; ft with `units=us`]
                 * @example 0.2352
                 */
                head: number;
                /**
                 * @description rho g Q H of it; negative where water comes down. [W]
                 * @example 4.94
                 */
                power: number;
                /**
                 * @description Of the hydraulic power of the pump; the shares add up to 1.
                 * @example 0.1497
                 */
                powerShare: number;
                /**
                 * @description The same share of the energy of a year, losses of pump and motor included. [kWh]
                 * @example 112.4
                 */
                annualEnergy: number;
                annualCost: number | null;
                /** @description What less of it would save a year, for the ten that take most; null for the others. */
                savings: {
                    /** @description With the next larger pipe of its series, at the same length: less friction in it, less loss of all elements that take their bore from it, and the loop solved and the setting chosen anew. Null for all but named pipes, for the largest of a series, and where an element beside it does not stand the wider bore. */
                    boreUp: {
                        /**
                         * @description The next larger pipe of the series.
                         * @example sch80 2
                         */
                        pipe: string;
                        /** @description On the grid of settings: `best` less the best of the same request with the change; null where none would serve. */
                        grid: {
                            /**
                             * @description Place of the best candidate then, from 0.
                             * @example 0
                             */
                            candidate: number;
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 69
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        /** @description The same two pumps, each at the smallest setting of any decimals, so that no step hides it. */
                        continuous: {
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 68.83
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                    /** @description With half of its head at any flow; null for pipes. */
                    halved: {
                        /** @description On the grid of settings: `best` less the best of the same request with the change; null where none would serve. */
                        grid: {
                            /**
                             * @description Place of the best candidate then, from 0.
                             * @example 0
                             */
                            candidate: number;
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 69
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        /** @description The same two pumps, each at the smallest setting of any decimals, so that no step hides it. */
                        continuous: {
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 68.83
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                    /** @description Without it; null for outlets, whose stream takes its velocity head away in any case. */
                    removed: {
                        /** @description On the grid of settings: `best` less the best of the same request with the change; null where none would serve. */
                        grid: {
                            /**
                             * @description Place of the best candidate then, from 0.
                             * @example 0
                             */
                            candidate: number;
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 69
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                        /** @description The same two pumps, each at the smallest setting of any decimals, so that no step hides it. */
                        continuous: {
                            /**
                             * @description Setting that then serves [% of full].
                             * @example 68.83
                             */
                            setting: number;
                            /**
                             * @description Energy saved a year; negative where more would be used. [kWh]
                             * @example 30.71
                             */
                            annualEnergy: number;
                            annualCost: number | null;
                        } | null;
                    } | null;
                } | null;
            }[];
        };
        /** @description Which pump at which setting serves this loop at the least cost? */
        RecommendationInput: {
            loop: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            /** @description The pumps to choose among; all stored pumps where it is left out. */
            pumps?: (string | components["schemas"]["PumpInput"] | components["schemas"]["CountedPumpInput"])[];
            /**
             * @description Money per kWh; the site's price where it is left out. Negative where feeding in is paid.
             * @example 0.21
             */
            price?: number;
            /** @description Prices by time, in place of `price`; the site's tariff, else its price, where both are left out. */
            tariff?: string | components["schemas"]["TariffInput"];
            /**
             * @description Of the price that comes with it (ISO 4217); without a price it must be the site's.
             * @example EUR
             */
            currency?: string;
            /**
             * @description Hours a day at the setting; standby for the rest. 24 where it is left out.
             * @default 24
             * @example 24
             */
            hoursPerDay?: number;
            /**
             * @description The pipework as it is, or with every branch throttled to its required flow.
             * @default as-built
             * @example as-built
             * @enum {string}
             */
            balancing?: "as-built" | "trimmed";
            /**
             * @description What the ranking goes by: the cost of a year's energy, or purchase, energy, service and repairs over the years of `lifeCycle`.
             * @default energy-cost
             * @example energy-cost
             * @enum {string}
             */
            objective?: "energy-cost" | "life-cycle-cost";
            lifeCycle?: components["schemas"]["LifeCycleTermsInput"];
            limits?: components["schemas"]["LimitsInput"];
            /**
             * @description What the setting shall still serve under: pumps at the low end of a grade, larger required flows, more friction, or "calibration" for the bad end of the calibrated interval. A setting then qualifies when it serves as entered and there; `best` tells the duty as entered at that setting.
             * @example {
             *       "grade": "2B"
             *     }
             */
            assurance?: "calibration" | {
                /**
                 * @description ISO 9906 grade whose low end every pump shall still serve at, the scatter of its points about their fit included.
                 * @example 2B
                 * @enum {string}
                 */
                grade: "1B" | "1E" | "1U" | "2B" | "2U" | "3B";
            } | {
                /**
                 * @description Required flows are taken times (1 + margin).
                 * @example 0.1
                 */
                margin: number;
            } | {
                /**
                 * @description Friction is taken times this, on top of the loop's own frictionMultiplier.
                 * @example 1.3
                 */
                frictionMultiplier: number;
            };
            heat?: components["schemas"]["HeatTermsInput"];
            /**
             * @description `losses` adds where the head of the best candidate goes and what less of each would save; it takes at most 500 candidates.
             * @default plain
             * @example plain
             * @enum {string}
             */
            detail?: "plain" | "losses";
            /**
             * @description How many candidates the ranking tells of; 20 where it is left out.
             * @default 20
             * @example 20
             */
            rankingLimit?: number;
        };
        /** @description Several equal pumps in parallel. */
        CountedPumpInput: {
            pump: string | components["schemas"]["PumpInput"];
            /**
             * @description Equal pumps in parallel; 1 where it is left out.
             * @default 1
             * @example 1
             */
            count?: number;
        };
        /**
         * @description What counts for the objective `life-cycle-cost`; pumps are taken as bought anew.
         * @default {
         *       "years": 10,
         *       "discountRate": 0,
         *       "inflation": 0,
         *       "minutesPerFailure": 120
         *     }
         */
        LifeCycleTermsInput: {
            /**
             * @description Years that costs are looked at for.
             * @default 10
             * @example 10
             */
            years?: number;
            /**
             * @description What money earns elsewhere, a fraction a year.
             * @default 0
             * @example 0.04
             */
            discountRate?: number;
            /**
             * @description By what prices other than of energy rise, a fraction a year.
             * @default 0
             * @example 0.02
             */
            inflation?: number;
            /**
             * @description By what the price of energy rises, a fraction a year; as other prices where it is left out.
             * @example 0.03
             */
            energyInflation?: number;
            /**
             * @description Money an hour of work; the site's where it is left out, else 0.
             * @example 30
             */
            labourRate?: number;
            /**
             * @description Minutes of work that a failed pump demands.
             * @default 120
             * @example 120
             */
            minutesPerFailure?: number;
        };
        /**
         * @description What a setting must keep to besides the flows of the outlets.
         * @default {
         *       "throughSlotVelocity": 0.1524,
         *       "cloggedFraction": 0.5,
         *       "screenBasis": "mean",
         *       "pipeVelocity": 1.5,
         *       "efficiency": 0.85,
         *       "npsh": false,
         *       "extrapolation": false
         *     }
         */
        LimitsInput: {
            /**
             * @description Highest velocity through the slots of the part-clogged screen; null: not judged. 0.1524 m/s without it.
             * @default 0.1524
             */
            throughSlotVelocity?: (number | string) | null;
            /**
             * @description Share of the slots taken as clogged.
             * @default 0.5
             * @example 0.5
             */
            cloggedFraction?: number;
            /**
             * @description Which velocity of a screen rejects: its mean, or that of its busiest slots.
             * @default mean
             * @example mean
             * @enum {string}
             */
            screenBasis?: "mean" | "peak";
            /**
             * @description Velocity in a pipe above which a caution is given; it never rejects. [m/s; ft/s with `units=us`]
             * @default 1.5
             * @example 1.5
             */
            pipeVelocity?: number | string;
            /**
             * @description Wire-to-water efficiency above which the entered points cannot be right.
             * @default 0.85
             * @example 0.85
             */
            efficiency?: number;
            /**
             * @description Whether a pump whose NPSH is not met is rejected, where it is cautioned otherwise. Of a pump without npshPoints it judges no more than that the water does not boil before the pump.
             * @default false
             * @example false
             */
            npsh?: boolean;
            /**
             * @description Whether a duty beyond 1.1 times the largest entered flow is accepted.
             * @default false
             * @example false
             */
            extrapolation?: boolean;
        };
        /** @description Asks what the heat of a pump costs a chiller, or spares a heater. */
        HeatTermsInput: {
            /**
             * @description Coefficient of performance of the chiller or heater: heat moved over electricity.
             * @example 3
             */
            cop: number;
            /**
             * @description Whether a chiller takes the pump's heat away, or a heater is spared it.
             * @example cooling
             * @enum {string}
             */
            mode: "cooling" | "heating";
            /**
             * @description Whether the ranking counts what that costs or spares; not where it is left out.
             * @default false
             * @example false
             */
            inRanking?: boolean;
        };
        /** @description The least screen that keeps to a velocity. */
        ScreenSize: {
            /**
             * @description As it was asked for.
             * @example cylinder
             * @enum {string}
             */
            shape: "cylinder" | "flat" | "box";
            /**
             * @description Least length of each screen; of a cylinder at most 10 diameters, of a box no less than its width. Cut it no shorter. [m; ft with `units=us`]
             * @example 0.427
             */
            length: number;
            /**
             * @description Least number of equal screens that share the flow.
             * @example 1
             */
            count: number;
            diameter: number | null;
            /**
             * @description Open area over whole area, unclogged.
             * @example 0.35
             */
            openFraction: number;
            /**
             * @description Flow over the open area that clogging leaves. [m/s; ft/s with `units=us`]
             * @example 0.0921
             */
            meanVelocity: number;
            /**
             * @description Through the busiest openings: of a cylinder those at its root, mean x y coth y with y = sqrt(2) x 0.6 x (one screen's unclogged open area)/(pi diameter^2/4); the mean for other shapes. [m/s; ft/s with `units=us`]
             * @example 0.1524
             */
            peakVelocity: number;
            /**
             * @description The answer in one or two plain sentences.
             * @example One cylinder of 60 mm, at least 0.427 m long, keeps 7500 L/h below 0.1524 m/s.
             */
            summary: string;
            /** @description What to know about the screen. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A screen but for its length: a cylinder drawn from one end, a flat screen or a box. */
        ScreenSizeRequestInput: {
            /** @enum {string} */
            shape: "cylinder";
            /**
             * @description The outside diameter of the cylinder. [mm; in with `units=us`]
             * @example 60
             */
            diameter: number | string;
            /**
             * @description What is drawn through the screen, all pumps together. [L/h; gal/h with `units=us`]
             * @example 7500
             */
            flow: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description Share of the openings taken as clogged.
             * @default 0.5
             * @example 0.5
             */
            cloggedFraction?: number;
            /**
             * @description Highest velocity through the openings of the part-clogged screen, on average and at its busiest. [m/s; ft/s with `units=us`]
             * @default 0.1524
             * @example 0.1524
             */
            throughSlotVelocity?: number | string;
            /**
             * @description The width of the smallest animal in the tank, compared with the openings. [mm; in with `units=us`]
             * @example 6
             */
            smallestAnimal?: number | string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        } | {
            /** @enum {string} */
            shape: "flat";
            /**
             * @description The width of the flat screen. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number | string;
            /**
             * @description What is drawn through the screen, all pumps together. [L/h; gal/h with `units=us`]
             * @example 7500
             */
            flow: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description Share of the openings taken as clogged.
             * @default 0.5
             * @example 0.5
             */
            cloggedFraction?: number;
            /**
             * @description Highest velocity through the openings of the part-clogged screen, on average and at its busiest. [m/s; ft/s with `units=us`]
             * @default 0.1524
             * @example 0.1524
             */
            throughSlotVelocity?: number | string;
            /**
             * @description The width of the smallest animal in the tank, compared with the openings. [mm; in with `units=us`]
             * @example 6
             */
            smallestAnimal?: number | string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        } | {
            /** @enum {string} */
            shape: "box";
            /**
             * @description The width of the box, which is the shorter of the two sides that it stands on. [m; ft with `units=us`]
             * @example 0.3
             */
            width: number | string;
            /**
             * @description The height of the box. [m; ft with `units=us`]
             * @example 0.2
             */
            height: number | string;
            /**
             * @description What is drawn through the screen, all pumps together. [L/h; gal/h with `units=us`]
             * @example 7500
             */
            flow: number | string;
            /**
             * @description Open area over whole area, unclogged, 0.0001 to 1; that of slots or holes where those and their pitch are stated instead.
             * @example 0.35
             */
            openFraction?: number;
            /**
             * @description The width of the slots. [mm; in with `units=us`]
             * @example 2
             */
            slot?: number | string;
            /**
             * @description The diameter of round holes, instead of slots. [mm; in with `units=us`]
             * @example 3
             */
            hole?: number | string;
            /**
             * @description From the middle of one opening to the middle of the next. [mm; in with `units=us`]
             * @example 5.7
             */
            pitch?: number | string;
            /**
             * @description How holes stand: in rows and columns, or each between two of the next row.
             * @example staggered
             * @enum {string}
             */
            pattern?: "square" | "staggered";
            /**
             * @description Share of the openings taken as clogged.
             * @default 0.5
             * @example 0.5
             */
            cloggedFraction?: number;
            /**
             * @description Highest velocity through the openings of the part-clogged screen, on average and at its busiest. [m/s; ft/s with `units=us`]
             * @default 0.1524
             * @example 0.1524
             */
            throughSlotVelocity?: number | string;
            /**
             * @description The width of the smallest animal in the tank, compared with the openings. [mm; in with `units=us`]
             * @example 6
             */
            smallestAnimal?: number | string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description What a leak lets out, how fast and how deep. */
        LeakExposure: {
            /**
             * @description Outflow at the start. [L/h; gal/h with `units=us`]
             * @example 3019.72
             */
            flow: number;
            /**
             * @description Until the surface stands at the hole in the tank and no more can leave. [s]
             * @example 3814.9
             */
            timeToHole: number;
            timeToLevel: number | null;
            /**
             * @description What is lost down to the hole. [L; gal with `units=us`]
             * @example 1600
             */
            volume: number;
            floodDepth: number | null;
            /**
             * @description The answer in one or two plain sentences.
             * @example 3020 L/h leave at first; in 63.58 min 1600 L are on the floor, 0.1333 m deep.
             */
            summary: string;
            /** @description What to know about leaks. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description An opening below the surface of a tank. */
        LeakExposureRequestInput: {
            opening: components["schemas"]["LeakOpeningInput"];
            /**
             * @description The hole in the tank below its surface. [m; ft with `units=us`]
             * @example 0.4
             */
            depth: number | string;
            /**
             * @description How far below that hole the pipe from it is broken; 0 where it is not stated: the hole itself leaks. [m; ft with `units=us`]
             * @example 0.8
             */
            drop?: number | string;
            /**
             * @description Height of the surface above the hole that `timeToLevel` is asked for. [m; ft with `units=us`]
             * @example 0.2
             */
            level?: number | string;
            tank: components["schemas"]["LeakTankInput"];
            /**
             * @description The area of the floor or tray that the water spreads over. [m2; ft2 with `units=us`]
             * @example 12
             */
            floorArea?: number | string;
            /**
             * @description Cd of the opening; 0.61 is sharp-edged.
             * @default 0.61
             * @example 0.61
             */
            dischargeCoefficient?: number;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A round hole, or a slit all round a drilled fitting. */
        LeakOpeningInput: {
            /**
             * @description The diameter of the hole, or the bore of the broken pipe. [mm; in with `units=us`]
             * @example 25
             */
            diameter: number | string;
        } | {
            /**
             * @description How far the seal gapes, all round the fitting. [mm; in with `units=us`]
             * @example 0.5
             */
            gap: number | string;
            /**
             * @description The diameter of the fitting at its seal. [mm; in with `units=us`]
             * @example 60
             */
            fittingDiameter: number | string;
        };
        /** @description The tank that drains; its walls are taken as upright. */
        LeakTankInput: {
            /**
             * @description The volume of its water; no more than that is lost. [L; gal with `units=us`]
             * @example 2400
             */
            volume?: number | string;
            /**
             * @description The area of its surface. [m2; ft2 with `units=us`]
             * @example 4
             */
            area: number | string;
        };
        /** @description A stored comparison of life-cycle costs. */
        Comparison: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Its name.
             * @example Seahorse bank: three pumps or one
             */
            name: string;
            /**
             * @description Whether a loop, pump, tariff, schedule or the site has changed since: ask anew for figures of today.
             * @example false
             */
            stale: boolean;
            /**
             * @description Of all its money: that of the site.
             * @example EUR
             */
            currency: string;
            /** @description In the order of the request; the first is what the others are measured against. */
            options: components["schemas"]["ComparedOption"][];
            /**
             * @description Place of the feasible option of least present value, from 0; null where none is feasible.
             * @example 1
             */
            cheapest: number | null;
            /**
             * @description That of the cheapest option other than the first: money per kWh at which it costs as much as the first.
             * @example 0.09
             */
            breakEvenPrice: number | null;
            /**
             * @description That of the same option [money].
             * @example 9200
             */
            breakEvenValueAtRisk: number | null;
            /** @description What the saving of the same option against the first hangs on, the strongest first; empty with one option. */
            sensitivity: components["schemas"]["ComparisonSensitivity"][];
            /** @description What the figures suppose. */
            assumptions: {
                /**
                 * @description Looked at.
                 * @example 10
                 */
                years: number;
                /**
                 * @description A fraction a year.
                 * @example 0.04
                 */
                discountRate: number;
                /**
                 * @description Of all but energy, a fraction a year.
                 * @example 0.02
                 */
                inflation: number;
                /**
                 * @description Of energy, a fraction a year.
                 * @example 0.03
                 */
                energyInflation: number;
                /**
                 * @description Money an hour.
                 * @example 30
                 */
                labourRate: number;
                /**
                 * @description Money per kWh; the time-mean price of a tariff. A schedule takes the prices of its hours.
                 * @example 0.21
                 */
                price: number;
                /**
                 * @description Name of the tariff that the price is the mean of; null: flat.
                 * @example null
                 */
                tariff: string | null;
                /**
                 * @description Of work.
                 * @example 120
                 */
                minutesPerFailure: number;
                /**
                 * @description What else was assumed, in sentences.
                 * @example [
                 *       "Canister 250 states no failures: none are expected."
                 *     ]
                 */
                notes: string[];
            };
            /**
             * @description The answer in a few sentences.
             * @example One Canister 250 costs least over 10 years: 2292 EUR against 3110 EUR, back after 2.9 years.
             */
            summary: string;
            /** @description What to know. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["ComparisonBasis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description What an option costs over the years. */
        ComparedOption: {
            /**
             * @description Its name.
             * @example One Canister 250
             */
            name: string;
            /**
             * @description Whether all that it runs serves.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Life-cycle cost: what all of it is worth now. [money]
             * @example 2292
             */
            presentValue: number;
            /** @description By the doubt in the curves about the energy alone. */
            range: {
                /**
                 * @description Least present value. [money]
                 * @example 2260
                 */
                low: number;
                /**
                 * @description Greatest present value. [money]
                 * @example 2410
                 */
                high: number;
            };
            /** @description The present value by cost element; they add up to it. */
            elements: {
                /**
                 * @description Pumps, their replacements, pipework, less what is left at the end. [money]
                 * @example 1014
                 */
                purchase: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 180
                 */
                installation: number;
                /**
                 * @description Electricity. [money]
                 * @example 592
                 */
                energy: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                operation: number;
                /**
                 * @description Attention at the labour rate, and parts. [money]
                 * @example 410
                 */
                maintenance: number;
                /**
                 * @description What failures are expected to cost. [money]
                 * @example 96
                 */
                downtime: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                environment: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                disposal: number;
            };
            /** @description Year by year, from 0. */
            years: components["schemas"]["ComparisonYear"][];
            /** @description Of what it costs more at first than the first option; null for that one, and for one that costs the same. */
            payback: {
                simple: number | null;
                discounted: number | null;
            } | null;
            /**
             * @description Money per kWh at which it costs as much as the first option in present value; null without such a price.
             * @example 0.09
             */
            breakEvenPrice: number | null;
            /**
             * @description Value at risk of both at which they cost the same [money]; null without such a value.
             * @example 9200
             */
            breakEvenValueAtRisk: number | null;
            /**
             * @description Energy of a year. [kWh]
             * @example 339.9
             */
            annualEnergy: number;
            /**
             * @description Of that energy, at the price of today. [money]
             * @example 71.4
             */
            annualEnergyCost: number;
            attention: {
                /**
                 * @description Pumps that it has.
                 * @example 1
                 */
                devices: number;
                /**
                 * @description Hours of work a year.
                 * @example 1.76667
                 */
                hours: number;
                /**
                 * @description Of them a year, parts included, today. [money]
                 * @example 93
                 */
                cost: number;
            };
            expectedLoss: {
                /**
                 * @description Of a year, at the rates that the counts give. [money]
                 * @example 48.5
                 */
                value: number;
                /**
                 * @description At the least rates that the counts allow (95 %). [money]
                 * @example 5.9
                 */
                low: number;
                /**
                 * @description At the greatest. [money]
                 * @example 175
                 */
                high: number;
            };
            /** @description What it runs. */
            assemblies: components["schemas"]["ComparisonAssemblyFigures"][];
            /** @description What to know of it. */
            cautions: components["schemas"]["Caution"][];
        };
        /** @description A year of an option. */
        ComparisonYear: {
            /**
             * @description 0 is now.
             * @example 1
             */
            year: number;
            /** @description In the money of that year. */
            elements: {
                /**
                 * @description Pumps, their replacements, pipework, less what is left at the end. [money]
                 * @example 1014
                 */
                purchase: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 180
                 */
                installation: number;
                /**
                 * @description Electricity. [money]
                 * @example 592
                 */
                energy: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                operation: number;
                /**
                 * @description Attention at the labour rate, and parts. [money]
                 * @example 410
                 */
                maintenance: number;
                /**
                 * @description What failures are expected to cost. [money]
                 * @example 96
                 */
                downtime: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                environment: number;
                /**
                 * @description Extras of this kind. [money]
                 * @example 0
                 */
                disposal: number;
            };
            /**
             * @description All elements. [money]
             * @example 138.2
             */
            total: number;
            /**
             * @description What they are worth now. [money]
             * @example 132.9
             */
            presentValue: number;
            /**
             * @description Present values up to and with this year. [money]
             * @example 1092.9
             */
            cumulated: number;
        };
        /** @description A pump, or several in parallel, of an option. */
        ComparisonAssemblyFigures: {
            /** @description Null where its power is stated without a loop. */
            loop: {
                /**
                 * @description Null where it came with the request, or several loops are joined.
                 * @example 0198c0de
                 */
                id: string | null;
                /**
                 * @description Its name; of joined loops all of them.
                 * @example Seahorse bank
                 */
                name: string;
            } | null;
            /** @description Null where its power is stated without a pump. */
            pump: components["schemas"]["PumpReference"] | null;
            /**
             * @description Equal pumps in parallel.
             * @example 1
             */
            count: number;
            /**
             * @description Whether they are bought.
             * @example true
             */
            new: boolean;
            /**
             * @description What is dialled; the usual one of a schedule; null where its power is stated.
             * @example 53
             */
            setting: number | null;
            /**
             * @description Where it comes from. `highest`: no setting serves, so that the highest is told. `power`: its power is stated.
             * @example recommended
             * @enum {string}
             */
            settingFrom: "stated" | "schedule" | "installed" | "recommended" | "highest" | "power";
            /**
             * @description Whether every outlet is served and every limit holds; not judged where its power is stated.
             * @example true
             */
            feasible: boolean;
            /**
             * @description Why it is not feasible; null where it is.
             * @example null
             */
            detail: string | null;
            /**
             * @description Electrical power of all its pumps while it runs; the mean of a schedule. [W]
             * @example 38.8
             */
            power: number;
            /**
             * @description Energy of a year. [kWh]
             * @example 339.9
             */
            annualEnergy: number;
            /**
             * @description Of that energy, at the price of today. [money]
             * @example 71.4
             */
            annualCost: number;
            servedShare: number | null;
            /** @description From the counts of the pump; null where it has none, and none is then expected. */
            failuresPerDeviceYear: {
                /**
                 * @description Failures over years watched.
                 * @example 0.0666667
                 */
                value: number;
                /**
                 * @description Lower end of its exact 95 % interval.
                 * @example 0.00807364
                 */
                low: number;
                /**
                 * @description Upper end.
                 * @example 0.240823
                 */
                high: number;
            } | null;
            /**
             * @description Hours of work that its pumps, and the routine checks of its loops, ask for in a year.
             * @example 1.76667
             */
            attentionHours: number;
            /**
             * @description Of all its pumps. [money]
             * @example 780
             */
            price: number;
            /**
             * @description Expected life of a pump; null: not known, taken to outlast the years looked at.
             * @example 8
             */
            lifeYears: number | null;
            /**
             * @description Of pumps that are there already.
             * @example 0
             */
            ageYears: number;
        };
        /** @description How much the saving hangs on one input. */
        ComparisonSensitivity: {
            /**
             * @description What is changed, in both options; `energy-of-option` in the other one alone.
             * @example energy-price
             * @enum {string}
             */
            input: "energy-price" | "energy-of-option" | "purchase-prices" | "labour-rate" | "attention" | "failures" | "value-at-risk" | "discount-rate" | "inflation" | "energy-inflation";
            /**
             * @description Saving in present value with the input 20 % lower. [money]
             * @example 640
             */
            low: number;
            /**
             * @description With it 20 % higher. [money]
             * @example 1010
             */
            high: number;
            /**
             * @description The larger change of the saving. [money]
             * @example 185
             */
            effect: number;
            /**
             * @description Whether the other option becomes the cheaper one.
             * @example false
             */
            flips: boolean;
        };
        /** @description The stored versions that the figures rest on. */
        ComparisonBasis: {
            /**
             * @description Version of the formulas.
             * @example 1
             */
            modelVersion: string;
            loops: {
                /**
                 * @description Id of the loop.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Null where there was none.
                 * @example 3
                 */
                version: number | null;
            }[];
            pumps: {
                /**
                 * @description Id of the pump.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Null where there was none.
                 * @example 3
                 */
                version: number | null;
            }[];
            tariffs: {
                /**
                 * @description Id of the tariff.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Null where there was none.
                 * @example 3
                 */
                version: number | null;
            }[];
            schedules: {
                /**
                 * @description Id of the loop of the schedule.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Null where there was none.
                 * @example 3
                 */
                version: number | null;
            }[];
        };
        /** @description Options, and how money of several years is made comparable. */
        ComparisonRequestInput: {
            /**
             * @description Its name; after its options where it is left out.
             * @example Seahorse bank: three pumps or one
             */
            name?: string;
            /**
             * @description Years that costs are looked at for.
             * @example 10
             */
            years: number;
            /**
             * @description What money earns elsewhere, a fraction a year.
             * @default 0
             * @example 0.04
             */
            discountRate?: number;
            /**
             * @description By what prices other than of energy rise, a fraction a year.
             * @default 0
             * @example 0.02
             */
            inflation?: number;
            /**
             * @description By what the price of energy rises, a fraction a year; as other prices where it is left out.
             * @example 0.03
             */
            energyInflation?: number;
            /**
             * @description Money an hour of work; the site's where it is left out, else 0.
             * @example 30
             */
            labourRate?: number;
            /**
             * @description Money per kWh; the site's price where it is left out. Negative where feeding in is paid.
             * @example 0.21
             */
            price?: number;
            /** @description Prices by time, in place of `price`; the site's tariff, else its price, where both are left out. */
            tariff?: string | components["schemas"]["TariffInput"];
            /**
             * @description Where it is stated, it must be the currency of the site: nothing is converted.
             * @example EUR
             */
            currency?: string;
            /**
             * @description Minutes of work that a failed pump demands.
             * @default 120
             * @example 120
             */
            minutesPerFailure?: number;
            /** @description The first is what the others are measured against. */
            options: components["schemas"]["ComparisonOptionInput"][];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description One way to do it. */
        ComparisonOptionInput: {
            /**
             * @description Its name.
             * @example One Canister 250
             */
            name: string;
            /** @description What it runs. */
            assemblies: components["schemas"]["ComparisonAssemblyInput"][];
            /**
             * @description What else it costs.
             * @default []
             */
            extras?: components["schemas"]["ComparisonExtraInput"][];
            risk?: components["schemas"]["ComparisonRiskInput"];
        };
        /** @description A pump, or several in parallel, on a loop. */
        ComparisonAssemblyInput: {
            loop?: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            consolidate?: components["schemas"]["ConsolidationInput"];
            pump?: string | components["schemas"]["PumpInput"];
            /**
             * @description Equal pumps in parallel; of the installed pump as many as are installed, else 1.
             * @example 1
             */
            count?: number;
            /**
             * @description Whether its pumps are bought; else they are there already, at no price, with the rest of their life.
             * @default true
             * @example true
             */
            new?: boolean;
            /**
             * @description Of pumps that are there already; since `installed.since` where it is left out.
             * @example 3
             */
            ageYears?: number;
            /**
             * @description The part of the value at risk of its option that hangs on it.
             * @default 1
             * @example 0.5
             */
            riskShare?: number;
            /**
             * @description Electrical power of all its pumps, where curves are missing; nothing is then judged or solved for it. [W]
             * @example 132
             */
            power?: number | string;
            /**
             * @description The setting that it runs at. Where it is left out: that of the schedule, of a pump that is there already as it is installed, else the smallest at which every outlet is served. [%]
             * @example 70
             */
            setting?: number | string;
            /**
             * @description Hours a day at the setting; standby for the rest. 24 where it is left out.
             * @default 24
             * @example 24
             */
            hoursPerDay?: number;
            /**
             * @description The pipework as it is, or with every branch throttled to its required flow.
             * @default as-built
             * @example as-built
             * @enum {string}
             */
            balancing?: "as-built" | "trimmed";
        };
        /** @description Several loops joined on one pump. */
        ConsolidationInput: {
            /** @description Loops whose outlets one pump is to feed. Their own suctions are left out. */
            loops: (string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"])[];
            /** @description From the water to the pump. */
            suction: components["schemas"]["RunElementInput"][];
            /** @description From the pump to where the loops part. */
            manifold: components["schemas"]["RunElementInput"][];
            intake?: components["schemas"]["IntakeInput"];
        };
        /** @description A cost besides pumps and their running. */
        ComparisonExtraInput: {
            /**
             * @description What it is.
             * @example Two drilled bulkheads
             */
            name: string;
            /**
             * @description The cost element it counts as; pipework counts as purchase.
             * @example installation
             * @enum {string}
             */
            kind: "pipework" | "installation" | "operation" | "environment" | "disposal";
            /**
             * @description Money of today, each time; negative where it brings money.
             * @example 180
             */
            cost: number;
            /**
             * @description The year at whose end it is paid; 0 is now.
             * @example 0
             */
            year: number;
            /**
             * @description Paid again every so many years; once where it is left out.
             * @example 2
             */
            everyYears?: number;
        };
        /** @description What a failure may cost. */
        ComparisonRiskInput: {
            /**
             * @description Money that is lost when an outlet stays short for too long.
             * @example 4000
             */
            valueAtRisk: number;
            /**
             * @description Hours that the animals bear it.
             * @example 6
             */
            survivalHours: number;
            /**
             * @description Hours that it takes in the mean until water moves again.
             * @example 12
             */
            meanRestoreHours: number;
            /**
             * @description The share of its required flow that an outlet must keep meanwhile.
             * @default 1
             * @example 1
             */
            neededShare?: number;
        };
        /** @description A page of a list. */
        ComparisonList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["ComparisonListed"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A stored comparison in a list. */
        ComparisonListed: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Its name.
             * @example Seahorse bank: three pumps or one
             */
            name: string;
            /**
             * @description Of its money.
             * @example EUR
             */
            currency: string;
            /**
             * @description How many it has.
             * @example 2
             */
            options: number;
            /**
             * @description Name of the cheapest one; null where none is feasible.
             * @example One Canister 250
             */
            cheapest: string | null;
            /**
             * @description The answer in a few sentences.
             * @example One Canister 250 costs least over 10 years.
             */
            summary: string;
        };
        /** @description The materials of a loop, priced where a price is known. */
        BillOfMaterials: {
            /** @description By kind, then name. */
            materials: {
                /**
                 * @description What it is.
                 * @example pipe
                 * @enum {string}
                 */
                kind: "pipe" | "fitting" | "valve" | "tee" | "nozzle" | "screen";
                /**
                 * @description What it is and of which size: the name that a price list uses. Sizes are in mm here.
                 * @example pipe, sch80 1-1/2
                 */
                name: string;
                /**
                 * @description Pieces; of a pipe the runs that it is used in.
                 * @example 1
                 */
                count: number;
                length: number | null;
                /**
                 * @description Pieces to buy; null of a pipe that is sold by any length.
                 * @example 1
                 */
                bought: number | null;
                cost: number | null;
            }[];
            /**
             * @description Of all that has a price.
             * @example 36.25
             */
            total: number;
            /**
             * @description The site's.
             * @example EUR
             */
            currency: string;
            /**
             * @description Whether all that is on the bill has a price, and every element is named.
             * @example false
             */
            complete: boolean;
            /**
             * @description Names of materials that the list has no price for.
             * @example [
             *       "elbow-90, sch80 2"
             *     ]
             */
            unpriced: string[];
            /**
             * @description Elements that state a loss but not what causes it, as JSON pointers into the loop.
             * @example [
             *       "/discharge/branches/1/run/0"
             *     ]
             */
            unnamed: string[];
            /** @description The total as one of the `extras` of an option of a comparison, to paste there. */
            extra: {
                /**
                 * @description After the loop.
                 * @example Pipework of Kelp flume
                 */
                name: string;
                /**
                 * @description Its kind.
                 * @example pipework
                 * @enum {string}
                 */
                kind: "pipework";
                /**
                 * @description The total.
                 * @example 36.25
                 */
                cost: number;
                /**
                 * @description Paid at the start.
                 * @example 0
                 */
                year: number;
            };
            /**
             * @description The answer in one or two plain sentences.
             * @example 6 materials, 36.25 EUR for what has a price; 5 have none.
             */
            summary: string;
            /** @description What to know. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A loop whose pipework is known, and a price list. */
        BillOfMaterialsRequestInput: {
            loop: string | components["schemas"]["SystemCurveLoopInput"] | components["schemas"]["PipeworkLoopInput"];
            /**
             * @description A price list; it may hold more than the loop needs. Without one nothing is priced.
             * @default []
             */
            prices?: components["schemas"]["MaterialPriceInput"][];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description What one material costs. */
        MaterialPriceInput: {
            /**
             * @description The name of the material as the bill tells it.
             * @example pipe, sch80 1-1/2
             */
            name: string;
            /**
             * @description Money of one piece; of a pipe, of one unit of length (m or ft), or of one length as it is sold.
             * @example 14.5
             */
            price: number;
            /**
             * @description The length in which alone a pipe is sold; whole ones are bought. [m; ft with `units=us`]
             * @example 3
             */
            soldBy?: number | string;
        };
        /** @description The shelf of a model of device. */
        Spares: {
            /**
             * @description The fewest spares that last through one lead time with the stated confidence.
             * @example 1
             */
            spares: number;
            /**
             * @description How probable it is that they last: that no more devices fail than there are spares.
             * @example 0.998
             */
            probability: number;
            /**
             * @description Failures to be expected during one lead time.
             * @example 0.0613279
             */
            meanDemand: number;
            /** @description The same if the devices fail as often as the counts still allow. */
            atHighRate: {
                /**
                 * @description The fewest spares that last through one lead time with the stated confidence.
                 * @example 1
                 */
                spares: number;
                /**
                 * @description How probable it is that they last: that no more devices fail than there are spares.
                 * @example 0.998
                 */
                probability: number;
                /**
                 * @description Failures to be expected during one lead time.
                 * @example 0.0613279
                 */
                meanDemand: number;
            };
            /** @description How often one device fails a year, from the counts. */
            failuresPerDeviceYear: {
                /**
                 * @description Failures over years watched.
                 * @example 0.0666667
                 */
                value: number;
                /**
                 * @description Lower end of the exact 95 % interval of so many failures.
                 * @example 0.00807364
                 */
                low: number;
                /**
                 * @description Its upper end.
                 * @example 0.240823
                 */
                high: number;
            };
            /**
             * @description Devices that share the spares.
             * @example 12
             */
            positions: number;
            /**
             * @description As asked.
             * @example 28
             */
            leadTimeDays: number;
            /**
             * @description As asked.
             * @example 0.95
             */
            confidence: number;
            /**
             * @description The answer in one or two plain sentences.
             * @example Keep 1 spare for 12 devices: it lasts through 28 days with a probability of 99.8 %.
             */
            summary: string;
            /** @description What to know about spares. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
        };
        /** @description A model of device, where it is in use, and how long a new one takes to come. */
        SparesRequestInput: {
            /**
             * @description A stored pump. Its failure counts and its positions are taken where they are not stated.
             * @example 0198c0de-0000-7000-8000-000000000002
             */
            pump?: string;
            failures?: components["schemas"]["FailuresInput"];
            /**
             * @description Devices that share the spares; where it is not stated, those that stored loops state as installed.
             * @example 12
             */
            positions?: number;
            /**
             * @description Days from an order until the new device is on the shelf.
             * @example 28
             */
            leadTimeDays: number;
            /**
             * @description How probable it must be that the spares last through one lead time.
             * @default 0.95
             * @example 0.95
             */
            confidence?: number;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A stored upgrade plan. */
        UpgradePlan: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Its name.
             * @example Pumps 2026 to 2030
             */
            name: string;
            /**
             * @description Length of the plan.
             * @example 5
             */
            years: number;
            /**
             * @description Of all money of the plan.
             * @example EUR
             */
            currency: string;
            /**
             * @description What all that is made adds, at the start of year 1. [money]
             * @example 1640.2
             */
            presentValue: number;
            /**
             * @description `optimal`: no plan is worth more. `time-limit`: the best that was found in the time, see `gap`.
             * @example optimal
             * @enum {string}
             */
            status: "optimal" | "time-limit";
            /**
             * @description By what fraction of its present value a better plan could exceed it at most, 0 where it is proven best; null where the plan is worth nothing.
             * @example 0
             */
            gap: number | null;
            /**
             * @description The plan in a few sentences.
             * @example Make One large pump for the seahorse bank in year 1.
             */
            summary: string;
            /**
             * @description Money new in year 1, 2, ..; nothing new in the years beyond its end.
             * @example [
             *       1000,
             *       800,
             *       800
             *     ]
             */
            budget: number[];
            /**
             * @description Discount rate a year as a fraction, without inflation where savings are stated in money of today.
             * @example 0.05
             */
            discountRate: number;
            /**
             * @description Whether money that is not spent may be spent in a later year.
             * @example true
             */
            carryOver: boolean;
            /** @description As they were entered. */
            candidates: components["schemas"]["Upgrade"][];
            /** @description What is made, by year, then by place among the candidates. */
            items: components["schemas"]["UpgradePlanItem"][];
            /** @description What is not made, by place among the candidates. */
            leftOut: components["schemas"]["UpgradeLeftOut"][];
            /** @description The budget year by year. */
            spending: components["schemas"]["UpgradePlanYear"][];
            moreBudget: components["schemas"]["UpgradePlanMoreBudget"];
            /** @description What the reader of the plan must know. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description An upgrade that a plan may hold. */
        Upgrade: {
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example One large pump for the seahorse bank
             */
            name: string;
            /**
             * @description Money in all, paid at the start of the year in which it is made.
             * @example 780
             */
            cost: number;
            /**
             * @description Money saved by the end of each year from then on; negative where it costs more to run.
             * @example 260
             */
            yearlySaving: number;
            /**
             * @description How long it lasts; the share unused at the end of the plan keeps its share of the cost.
             * @example 8
             */
            lifeYears: number;
            /**
             * @description Of the candidates of one group at most one is made.
             * @example seahorse bank
             */
            group?: string;
            /**
             * @description First year in which it may be made; 1 where it is left out.
             * @example 2
             */
            notBefore?: number;
            /**
             * @description Last year in which it may be made; the last of the plan where it is left out.
             * @example 2
             */
            notAfter?: number;
            /**
             * @description Whether it must be made in some year, pay or not.
             * @example false
             */
            must?: boolean;
        };
        /** @description An upgrade that is made. */
        UpgradePlanItem: {
            /**
             * @description Place among the candidates, from 0.
             * @example 0
             */
            candidate: number;
            /**
             * @description Its name.
             * @example One large pump for the seahorse bank
             */
            name: string;
            /**
             * @description At the start of which it is made, from 1.
             * @example 1
             */
            year: number;
            /**
             * @description What it costs. [money]
             * @example 780
             */
            cost: number;
            /**
             * @description What it adds to that of the plan; a must may take from it. [money]
             * @example 812.4
             */
            presentValue: number;
        };
        /** @description An upgrade that is not made, and why. */
        UpgradeLeftOut: {
            /**
             * @description Place among the candidates, from 0.
             * @example 0
             */
            candidate: number;
            /**
             * @description Its name.
             * @example New screens
             */
            name: string;
            /**
             * @description `outside-plan`: its years are not in the plan. `does-not-pay`: its cost exceeds its present value in every year. `over-budget`: the budget never reaches its cost. `group`: another of its group is made. `no-room`: the budget is better spent on the rest.
             * @example no-room
             * @enum {string}
             */
            reason: "outside-plan" | "does-not-pay" | "over-budget" | "group" | "no-room";
            /**
             * @description The reason in a sentence with its figures.
             * @example It does not pay: even in its best year, year 1, its cost exceeds what it saves and keeps of its value by 40 EUR of present value.
             */
            detail: string;
            /**
             * @description The least money more with which it could be made beside the plan [money]; null for other reasons.
             * @example 120
             */
            missing: number | null;
        };
        /** @description A year of the budget. */
        UpgradePlanYear: {
            /**
             * @description Of the plan, from 1.
             * @example 1
             */
            year: number;
            /**
             * @description New in this year. [money]
             * @example 1000
             */
            budget: number;
            /**
             * @description With what earlier years left. [money]
             * @example 1220
             */
            available: number;
            /**
             * @description Spent in this year. [money]
             * @example 780
             */
            spent: number;
            /**
             * @description Handed on to the next year; 0 without carry-over. [money]
             * @example 440
             */
            carried: number;
        };
        /** @description The same with 1 % more budget in every year. */
        UpgradePlanMoreBudget: {
            /**
             * @description Each year's budget and 1 % more.
             * @example [
             *       1010,
             *       808,
             *       808
             *     ]
             */
            budget: number[];
            /**
             * @description Of the best plan under it. [money]
             * @example 1640.2
             */
            presentValue: number;
            /**
             * @description More than that of this plan. [money]
             * @example 0
             */
            gain: number;
            /**
             * @description `optimal`: no plan is worth more. `time-limit`: the best that was found in the time, see `gap`.
             * @example optimal
             * @enum {string}
             */
            status: "optimal" | "time-limit";
            /**
             * @description By what fraction of its present value a better plan could exceed it at most, 0 where it is proven best; null where the plan is worth nothing.
             * @example 0
             */
            gap: number | null;
        };
        /** @description Which upgrades in which year are worth most under a budget? */
        UpgradePlanInput: {
            /**
             * @description A name, 1 to 120 characters, not unique; "Upgrade plan" where it is left out.
             * @default Upgrade plan
             * @example Pumps 2026 to 2030
             */
            name?: string;
            /**
             * @description Length of the plan.
             * @example 5
             */
            years: number;
            /**
             * @description Money new in year 1, 2, ..; nothing new in the years beyond its end.
             * @example [
             *       1000,
             *       800,
             *       800
             *     ]
             */
            budget: number[];
            /**
             * @description Discount rate a year as a fraction, without inflation where savings are stated in money of today.
             * @example 0.05
             */
            discountRate: number;
            /**
             * @description Whether money that is not spent may be spent in a later year; it bears no interest.
             * @default true
             * @example true
             */
            carryOver?: boolean;
            /**
             * @description Of all money of the plan; the site's, which it must be where it is stated.
             * @example EUR
             */
            currency?: string;
            /** @description What to choose among. */
            candidates: components["schemas"]["UpgradeInput"][];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description An upgrade that a plan may hold. */
        UpgradeInput: {
            /**
             * @description A name, 1 to 120 characters, not unique.
             * @example One large pump for the seahorse bank
             */
            name: string;
            /**
             * @description Money in all, paid at the start of the year in which it is made.
             * @example 780
             */
            cost: number;
            /**
             * @description Money saved by the end of each year from then on; negative where it costs more to run.
             * @example 260
             */
            yearlySaving: number;
            /**
             * @description How long it lasts; the share unused at the end of the plan keeps its share of the cost.
             * @example 8
             */
            lifeYears: number;
            /**
             * @description Of the candidates of one group at most one is made.
             * @example seahorse bank
             */
            group?: string;
            /**
             * @description First year in which it may be made; 1 where it is left out.
             * @example 2
             */
            notBefore?: number;
            /**
             * @description Last year in which it may be made; the last of the plan where it is left out.
             * @example 2
             */
            notAfter?: number;
            /**
             * @description Whether it must be made in some year, pay or not.
             * @example false
             */
            must?: boolean;
        };
        /** @description A page of a list. */
        UpgradePlanList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["UpgradePlanListed"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A stored upgrade plan in a list. */
        UpgradePlanListed: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Its name.
             * @example Pumps 2026 to 2030
             */
            name: string;
            /**
             * @description Length of the plan.
             * @example 5
             */
            years: number;
            /**
             * @description Of all money of the plan.
             * @example EUR
             */
            currency: string;
            /**
             * @description What all that is made adds, at the start of year 1. [money]
             * @example 1640.2
             */
            presentValue: number;
            /**
             * @description `optimal`: no plan is worth more. `time-limit`: the best that was found in the time, see `gap`.
             * @example optimal
             * @enum {string}
             */
            status: "optimal" | "time-limit";
            /**
             * @description By what fraction of its present value a better plan could exceed it at most, 0 where it is proven best; null where the plan is worth nothing.
             * @example 0
             */
            gap: number | null;
            /**
             * @description The plan in a few sentences.
             * @example Make One large pump for the seahorse bank in year 1.
             */
            summary: string;
        };
        /** @description The whole site in figures. */
        SiteSummary: {
            loops: components["schemas"]["SummaryLoops"];
            /**
             * @description Pumps that are installed.
             * @example 6
             */
            devices: number;
            /**
             * @description Pumps that are stored, among which savings are looked for.
             * @example 4
             */
            storedPumps: number;
            /**
             * @description Of all loops, the mean over the year. [W]
             * @example 812.4
             */
            power: number;
            /**
             * @description Of all loops in a year. [kWh]
             * @example 7116.6
             */
            annualEnergy: number;
            /**
             * @description What it costs a year [money]; null where a loop has no price.
             * @example 1494.5
             */
            annualCost: number | null;
            /**
             * @description Of all money here.
             * @example EUR
             */
            currency: string;
            short: components["schemas"]["SummaryShort"];
            aboveNeed: components["schemas"]["SummaryAboveNeed"];
            attention: components["schemas"]["SummaryAttention"];
            /** @description The ten largest savings a year, at most one a loop, largest first: by money, by energy where nothing is priced. */
            savings: components["schemas"]["SummarySaving"][];
            assumptions: components["schemas"]["SummaryAssumptions"];
            /**
             * @description The site in a few sentences.
             * @example 4 loops draw 812.4 W, 7117 kWh a year, 1495 EUR a year.
             */
            summary: string;
            /** @description What the reader of the figures must know. */
            cautions: components["schemas"]["Caution"][];
            basis: components["schemas"]["Basis"];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description How many loops there are, and how far each is counted. */
        SummaryLoops: {
            /**
             * @description Loops of the site.
             * @example 1
             */
            total: number;
            /**
             * @description Those with a schedule, whose year is walked by it.
             * @example 1
             */
            scheduled: number;
            /**
             * @description Those without an installed pump: in no sum.
             * @example 1
             */
            withoutPump: number;
            /**
             * @description Those of which no outlet requires a flow: in the sums, never short.
             * @example 1
             */
            withoutRequirement: number;
            /**
             * @description Those whose equations were not solved within their limits: in no sum.
             * @example 1
             */
            unsolved: number;
        };
        /** @description Loops short of flow. */
        SummaryShort: {
            /**
             * @description Loops with an outlet below its required flow.
             * @example 1
             */
            count: number;
            /** @description The 50 that lack most, the worst first. */
            loops: {
                /** @description The loop. */
                loop: {
                    /**
                     * @description Id of the loop.
                     * @example 0198c0de
                     */
                    id: string;
                    /**
                     * @description Its name.
                     * @example Kelp flume
                     */
                    name: string;
                };
                /**
                 * @description The outlet that lacks the largest share.
                 * @example far end
                 */
                outlet: string;
                /**
                 * @description What it gets. [L/h; gal/h with `units=us`]
                 * @example 2810
                 */
                flow: number;
                /**
                 * @description What it requires. [L/h; gal/h with `units=us`]
                 * @example 3000
                 */
                requiredFlow: number;
                /**
                 * @description flow/requiredFlow - 1, a fraction.
                 * @example -0.0633
                 */
                margin: number;
                /**
                 * @description In which phase of its schedule; null without one.
                 * @example night
                 */
                phase: string | null;
            }[];
        };
        /** @description Loops above their need. */
        SummaryAboveNeed: {
            /**
             * @description Loops whose pump serves all outlets at a lower setting than its own.
             * @example 1
             */
            count: number;
            /** @description The 50 that would save most, the largest saving first. */
            loops: {
                /** @description The loop. */
                loop: {
                    /**
                     * @description Id of the loop.
                     * @example 0198c0de
                     */
                    id: string;
                    /**
                     * @description Its name.
                     * @example Kelp flume
                     */
                    name: string;
                };
                /**
                 * @description The setting that is stored as installed. [%]
                 * @example 70
                 */
                installedSetting: number;
                /**
                 * @description The lowest setting that serves. [%]
                 * @example 70
                 */
                setting: number;
                /**
                 * @description Less in a year. [kWh]
                 * @example 412.6
                 */
                energySaved: number;
                /**
                 * @description Less in a year [money]; null where it is not known.
                 * @example 86.6
                 */
                costSaved: number | null;
            }[];
        };
        /** @description What pumps and loops ask of people in a year. */
        SummaryAttention: {
            service: {
                /**
                 * @description Hours of work a year for the service that installed pumps state [h].
                 * @example 9
                 */
                hours: number;
                /**
                 * @description Parts a year for the service that installed pumps state [money].
                 * @example 160
                 */
                parts: number;
                /**
                 * @description Parts, and the hours at the labour rate of the site, a year for the service that installed pumps state [money]; null without a rate.
                 * @example 430
                 */
                cost: number | null;
            };
            tasks: {
                /**
                 * @description Hours of work a year for the routine checks that are stored [h].
                 * @example 9
                 */
                hours: number;
                /**
                 * @description Parts a year for the routine checks that are stored [money].
                 * @example 160
                 */
                parts: number;
                /**
                 * @description Parts, and the hours at the labour rate of the site, a year for the routine checks that are stored [money]; null without a rate.
                 * @example 430
                 */
                cost: number | null;
            };
            /**
             * @description Hours of work a year in all [h].
             * @example 21
             */
            hours: number;
            /**
             * @description Parts a year in all [money].
             * @example 160
             */
            parts: number;
            /**
             * @description What both cost a year in all [money].
             * @example 790
             */
            cost: number | null;
        };
        /** @description What a change of one loop would save by the same requirement. */
        SummarySaving: {
            /** @description The loop. */
            loop: {
                /**
                 * @description Id of the loop.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Its name.
                 * @example Kelp flume
                 */
                name: string;
            };
            /**
             * @description `setting`: the pump that is there, set lower. `pump`: one of another stored pump in place of those that are there.
             * @example pump
             * @enum {string}
             */
            kind: "setting" | "pump";
            /** @description The other pump; null where the setting alone is changed. */
            pump: {
                /**
                 * @description Id of the pump.
                 * @example 0198c0de
                 */
                id: string;
                /**
                 * @description Its name.
                 * @example Kelp flume
                 */
                name: string;
            } | null;
            /**
             * @description How many of it.
             * @example 1
             */
            count: number;
            /**
             * @description The lowest that serves; with a schedule the highest of its phases. [%]
             * @example 70
             */
            setting: number;
            /**
             * @description Less in a year. [kWh]
             * @example 412.6
             */
            energySaved: number;
            /**
             * @description Less in a year [money]; null where it is not known.
             * @example 86.6
             */
            costSaved: number | null;
            /**
             * @description Price of the other pump; 0 where nothing is bought [money]; null where it is not known.
             * @example 780
             */
            purchase: number | null;
            /**
             * @description purchase/costSaved [years]; null where either is not known.
             * @example 3.2
             */
            simplePayback: number | null;
            /**
             * @description purchase/(costSaved - settingAlone.costSaved) [years]: what the purchase pays beyond what the lower setting saves for nothing; null where that is not known, or nothing.
             * @example 27.6
             */
            paybackBeyondSetting: number | null;
            /** @description What the pump that is there saves at its lowest setting that serves, with nothing bought; null for nothing. */
            settingAlone: {
                /**
                 * @description The lowest setting that serves. [%]
                 * @example 70
                 */
                setting: number;
                /**
                 * @description Less in a year. [kWh]
                 * @example 412.6
                 */
                energySaved: number;
                /**
                 * @description Less in a year [money]; null where it is not known.
                 * @example 86.6
                 */
                costSaved: number | null;
            } | null;
        };
        /** @description What the sums go by. */
        SummaryAssumptions: {
            /**
             * @description Of the calendar, for schedules and tariffs.
             * @example 2026
             */
            year: number;
            /**
             * @description Money per kWh of a loop without a schedule: of the tariff over the year, else of the site.
             * @example 0.21
             */
            price: number | null;
            /**
             * @description Name of the site's tariff; null without one.
             * @example Winter peak
             */
            tariff: string | null;
            /**
             * @description Hours a day at the setting of a loop without a schedule.
             * @example 24
             */
            hoursPerDay: number;
        };
        /** @description A routine check, and when it is due. */
        MaintenanceTask: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description What is to be done, 1 to 120 characters, not unique.
             * @example Clean the intake screen
             */
            title: string;
            /**
             * @description What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.
             * @example screen-cleaning
             * @enum {string}
             */
            kind: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            /**
             * Format: duration
             * @description The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.
             * @example P1W
             */
            every: string;
            /**
             * @description Minutes of work each time.
             * @example 10
             */
            minutes: number;
            /**
             * @description What parts cost each time, in the site's currency.
             * @example 5
             */
            parts: number;
            /**
             * @description Id of the loop that it is of; either this or `pump`.
             * @example 0198f1c2
             */
            loop?: string;
            /**
             * @description Id of the pump that it is of; either this or `loop`.
             * @example 0198f1c3
             */
            pump?: string;
            /**
             * Format: date
             * @description The day on which it is due for the first time, by the calendar of the site.
             * @example 2026-12-01
             */
            firstDue: string;
            /**
             * Format: date
             * @description The day on which it is due next, by the calendar of the site: one interval after it was last done, never before `firstDue`.
             * @example 2026-12-01
             */
            nextDue: string;
            /**
             * @description Whether it is due today or has been, by the calendar of the site.
             * @example false
             */
            due: boolean;
            /**
             * @description Whether the day on which it was due has gone by.
             * @example false
             */
            overdue: boolean;
            /**
             * @description Days until it is due; negative where it is overdue.
             * @example 6
             */
            daysUntilDue: number;
            /**
             * @description When it was last done; null: never.
             * @example 2026-01-15T12:00:00.000Z
             */
            lastDone: string | null;
            /**
             * @description How many times it was done.
             * @example 3
             */
            completions: number;
            /**
             * @description How often it comes round in a year of 365 days.
             * @example 52.1429
             */
            timesAYear: number;
            /**
             * @description Hours of work a year.
             * @example 8.69048
             */
            annualHours: number;
            /**
             * @description What parts cost a year.
             * @example 0
             */
            annualParts: number;
            annualCost: number | null;
            /**
             * @description The site's currency.
             * @example EUR
             */
            currency: string;
            /** @description What whoever does it must know. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A routine check of a loop or of a pump as its user enters it. */
        MaintenanceTaskInput: {
            /**
             * @description What is to be done, 1 to 120 characters, not unique.
             * @example Clean the intake screen
             */
            title: string;
            /**
             * @description What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.
             * @default other
             * @example screen-cleaning
             * @enum {string}
             */
            kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            /**
             * Format: duration
             * @description The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.
             * @example P1W
             */
            every: string;
            /**
             * @description Minutes of work each time.
             * @example 10
             */
            minutes: number;
            /**
             * @description What parts cost each time, in the site's currency.
             * @default 0
             * @example 5
             */
            parts?: number;
            /**
             * @description Id of the loop that it is of; either this or `pump`.
             * @example 0198f1c2
             */
            loop?: string;
            /**
             * @description Id of the pump that it is of; either this or `loop`.
             * @example 0198f1c3
             */
            pump?: string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
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
            /**
             * @description The day on which it is due for the first time, by the calendar of the site. Entered as an instant with its offset, the day that the clocks of the site show then.
             * @example 2026-12-01
             * @example 2026-12-01
             */
            firstDue: string;
        };
        /** @description A page of routine checks, and what all that the filters let through ask of a year. */
        MaintenanceTaskList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["MaintenanceTaskItem"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * Format: date
             * @description The day that the clocks of the site show, by which checks are due.
             * @example 2026-11-25
             */
            today: string;
            attention: components["schemas"]["MaintenanceAttention"];
            /** @description What whoever does it must know. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A routine check in a list. */
        MaintenanceTaskItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description What is to be done, 1 to 120 characters, not unique.
             * @example Clean the intake screen
             */
            title: string;
            /**
             * @description What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.
             * @example screen-cleaning
             * @enum {string}
             */
            kind: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            /**
             * Format: duration
             * @description The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.
             * @example P1W
             */
            every: string;
            /**
             * @description Minutes of work each time.
             * @example 10
             */
            minutes: number;
            /**
             * @description What parts cost each time, in the site's currency.
             * @example 5
             */
            parts: number;
            /**
             * @description Id of the loop that it is of; either this or `pump`.
             * @example 0198f1c2
             */
            loop?: string;
            /**
             * @description Id of the pump that it is of; either this or `loop`.
             * @example 0198f1c3
             */
            pump?: string;
            /**
             * Format: date
             * @description The day on which it is due for the first time, by the calendar of the site.
             * @example 2026-12-01
             */
            firstDue: string;
            /**
             * Format: date
             * @description The day on which it is due next, by the calendar of the site: one interval after it was last done, never before `firstDue`.
             * @example 2026-12-01
             */
            nextDue: string;
            /**
             * @description Whether it is due today or has been, by the calendar of the site.
             * @example false
             */
            due: boolean;
            /**
             * @description Whether the day on which it was due has gone by.
             * @example false
             */
            overdue: boolean;
            /**
             * @description Days until it is due; negative where it is overdue.
             * @example 6
             */
            daysUntilDue: number;
            /**
             * @description When it was last done; null: never.
             * @example 2026-01-15T12:00:00.000Z
             */
            lastDone: string | null;
            /**
             * @description How many times it was done.
             * @example 3
             */
            completions: number;
            /**
             * @description How often it comes round in a year of 365 days.
             * @example 52.1429
             */
            timesAYear: number;
            /**
             * @description Hours of work a year.
             * @example 8.69048
             */
            annualHours: number;
            /**
             * @description What parts cost a year.
             * @example 0
             */
            annualParts: number;
            annualCost: number | null;
            /**
             * @description The site's currency.
             * @example EUR
             */
            currency: string;
        };
        /** @description What checks ask of the people of a site in a year. */
        MaintenanceAttention: {
            /**
             * @description How many checks there are.
             * @example 5
             */
            tasks: number;
            /**
             * @description How many are due, those that are overdue included.
             * @example 1
             */
            due: number;
            /**
             * @description How many are overdue.
             * @example 0
             */
            overdue: number;
            /**
             * @description Hours of work a year.
             * @example 14.2
             */
            hours: number;
            /**
             * @description What parts cost a year.
             * @example 40
             */
            parts: number;
            labour: number | null;
            cost: number | null;
            /**
             * @description The site's currency.
             * @example EUR
             */
            currency: string;
        };
        /** @description One time that a check was done, and when the check is due next. */
        Completion: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of the check.
             * @example 0198f1c2
             */
            task: string;
            /**
             * Format: date-time
             * @description When it was done, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            at: string;
            /**
             * Format: date
             * @description The day on which it was done, as the clocks of the site showed when it was entered.
             * @example 2026-01-15
             */
            day: string;
            /**
             * @description Minutes that it took.
             * @example 10
             */
            minutes?: number;
            /**
             * @description What was seen or changed, 1 to 2000 characters.
             * @example Seal replaced.
             */
            note?: string;
            /**
             * Format: date
             * @description The day on which it is due next, by the calendar of the site: one interval after it was last done, never before `firstDue`.
             * @example 2026-12-01
             */
            nextDue: string;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description One time that a check was done. */
        CompletionInput: {
            /**
             * Format: date-time
             * @description When it was done, with an offset; not in the future. One completion an instant.
             * @example 2026-01-15T12:00:00Z
             */
            at: string;
            /**
             * @description Minutes that it took.
             * @example 10
             */
            minutes?: number;
            /**
             * @description What was seen or changed, 1 to 2000 characters.
             * @example Seal replaced.
             */
            note?: string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
            task?: unknown;
            day?: unknown;
            nextDue?: unknown;
        };
        /** @description A page of a list. */
        CompletionList: {
            /** @description In the order of their creation. */
            items: components["schemas"]["CompletionItem"][];
            /** @description The `cursor` of the next page; null on the last. */
            next: string | null;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description One time that a check was done. */
        CompletionItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of the check.
             * @example 0198f1c2
             */
            task: string;
            /**
             * Format: date-time
             * @description When it was done, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            at: string;
            /**
             * Format: date
             * @description The day on which it was done, as the clocks of the site showed when it was entered.
             * @example 2026-01-15
             */
            day: string;
            /**
             * @description Minutes that it took.
             * @example 10
             */
            minutes?: number;
            /**
             * @description What was seen or changed, 1 to 2000 characters.
             * @example Seal replaced.
             */
            note?: string;
        };
        /** @description The routine checks that common practice asks of a loop. */
        StarterTasks: {
            /** @description The checks that were made; none where the loop had them all. */
            items: components["schemas"]["MaintenanceTaskItem"][];
            /**
             * @description How many checks the loop had before, whoever entered them.
             * @example 0
             */
            kept: number;
            /** @description What whoever does it must know. */
            cautions: components["schemas"]["Caution"][];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description When the checks are due for the first time; today where it is left out. */
        StarterRequestInput: {
            /**
             * @description The day on which it is due for the first time, by the calendar of the site. Entered as an instant with its offset, the day that the clocks of the site show then.
             * @example 2026-12-01
             * @example 2026-12-01
             */
            firstDue?: string;
        };
        /** @description The standard pipes that a loop may name. */
        PipeTable: {
            /** @description A row a size. */
            items: {
                /**
                 * @description What a loop calls it.
                 * @example sch80 1-1/2
                 */
                name: string;
                /**
                 * @description The standard of its sizes.
                 * @example ASTM D1785
                 */
                standard: string;
                /**
                 * @description Its nominal size.
                 * @example 1-1/2
                 */
                nominal: string;
                /**
                 * @description Outside diameter. [mm; in with `units=us`]
                 * @example 48.26
                 */
                outsideDiameter: number;
                /**
                 * @description Least wall. [mm; in with `units=us`]
                 * @example 5.08
                 */
                minimumWall: number;
                /**
                 * @description Mean bore, which friction takes. [mm; in with `units=us`]
                 * @example 37.49
                 */
                insideDiameter: number;
                /**
                 * @description Roughness of the wall. [mm; in with `units=us`]
                 * @example 0.0015
                 */
                roughness: number;
                /**
                 * @description Where the figures come from.
                 * @example ASTM D1785
                 */
                source: string;
            }[];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description The fittings and valves that a loop may name. */
        FittingTable: {
            /** @description A row a fitting or valve. */
            items: {
                /**
                 * @description What a loop calls it.
                 * @example elbow-90
                 */
                name: string;
                /**
                 * @description Whether it is an element `fitting` or `valve`.
                 * @example fitting
                 * @enum {string}
                 */
                kind: "fitting" | "valve";
                /**
                 * @description `equivalent-diameters`: K = value x fT of the bore; `fixed-k`: K = value; `two-k`: K = laminarValue/Re + value (1 + 1 in/D); `three-k`: K = laminarValue/Re + value (1 + sizeValue/D^0.3), D in inches; `two-bores`: as the source says, from the bores of the pipes before and after it.
                 * @example equivalent-diameters
                 */
                method: string;
                /**
                 * @description The figure of the method, of a valve fully open; null for `two-bores`.
                 * @example 30
                 */
                value: number | null;
                /**
                 * @description Coefficient of 1/Re of `two-k` and `three-k`; null for other methods.
                 * @example 800
                 */
                laminarValue: number | null;
                /**
                 * @description Coefficient of the size of `three-k`; null for other methods.
                 * @example 4
                 */
                sizeValue: number | null;
                /**
                 * @description Whole angle of the cone of `two-bores` in degrees, 180 a step; null for other methods.
                 * @example 30
                 */
                angle: number | null;
                /** @description What a valve adds part open, from wide to narrow; empty where no table is known. */
                partOpenings: {
                    /**
                     * @description Opening [%].
                     * @example 50
                     */
                    opening: number;
                    /**
                     * @description K above that of the valve fully open.
                     * @example 5.5
                     */
                    addedLossCoefficient: number;
                }[];
                /**
                 * @description What it is.
                 * @example Elbow, 90 degrees, standard
                 */
                description: string;
                /**
                 * @description Where the figures come from.
                 * @example Crane Technical Paper 410, K = n fT
                 */
                source: string;
                /**
                 * @description Where the part openings come from; null without any.
                 * @example null
                 */
                partOpeningSource: string | null;
                /**
                 * @description Whether the figure is recalled and was not looked up.
                 * @example false
                 */
                fromMemory: boolean;
            }[];
        };
        /** @description What water weighs and how it resists shear, as every computation takes it. */
        WaterProperties: {
            /**
             * @description Of the water. [degC; degF with `units=us`]
             * @example 25
             */
            temperature: number;
            /**
             * @description Of the water. [g/kg]
             * @example 35
             */
            salinity: number;
            /**
             * @description Density at one atmosphere [kg/m3].
             * @example 1023.34
             */
            density: number;
            /**
             * @description Dynamic viscosity [Pa s].
             * @example 0.000958828
             */
            viscosity: number;
            /**
             * @description Kinematic viscosity [m2/s].
             * @example 9.36956e-7
             */
            kinematicViscosity: number;
            /**
             * @description Vapour pressure of fresh water, absolute. [kPa; psi with `units=us`]
             * @example 3.1699
             */
            vapourPressure: number;
            /**
             * @description Where the formulas come from.
             * @example UNESCO EOS-80; Sharqawy et al. 2010
             */
            source: string;
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description Every caution that an answer can carry. */
        CautionTable: {
            /** @description A row a code. */
            items: {
                /**
                 * @description Stable code by which answers name it.
                 * @example screen-uneven
                 */
                code: string;
                /**
                 * @description How grave it is.
                 * @example warning
                 * @enum {string}
                 */
                severity: "note" | "warning" | "danger";
                /**
                 * @description What it says; answers add in brackets what it is about.
                 * @example Water runs faster than the velocity limit in a pipe.
                 */
                sentence: string;
                /**
                 * @description On whose authority.
                 * @example common practice
                 */
                source: string;
            }[];
        };
        /** @description A site with all that it holds, in the units in force. */
        SiteCopy: {
            /**
             * @description What the document is.
             * @example loopwright-site
             * @enum {string}
             */
            format: "loopwright-site";
            /**
             * @description The version of its form.
             * @example 1
             * @enum {number}
             */
            formatVersion: 1;
            site: components["schemas"]["SiteItem"];
            /** @description Every tariff. */
            tariffs: components["schemas"]["TariffItem"][];
            /** @description Every pump. */
            pumps: components["schemas"]["PumpItem"][];
            /** @description Every loop. */
            loops: components["schemas"]["LoopItem"][];
            /** @description The schedules of loops, each under the id of its loop. */
            schedules: components["schemas"]["ScheduleItem"][];
            /** @description Every comparison, as it was made. */
            comparisons: components["schemas"]["ComputedCopy"][];
            /** @description Every upgrade plan, as it was made. */
            upgradePlans: components["schemas"]["ComputedCopy"][];
            /** @description Every routine check. */
            maintenanceTasks: components["schemas"]["MaintenanceTaskCopy"][];
            /** @description Every time that a check was done. */
            completions: components["schemas"]["CompletionCopy"][];
            /** @description Every calibration that was applied to a loop. */
            calibrations: components["schemas"]["CalibrationCopy"][];
            /** @description The readings of loops, some together. */
            readings: components["schemas"]["ReadingsCopy"][];
            /**
             * @description The unit of each quantity in this answer, by the name of the quantity.
             * @example {
             *       "flow": "L/h",
             *       "head": "m"
             *     }
             */
            units: {
                [key: string]: string;
            };
        };
        /** @description A facility, with the version and times of its record. */
        SiteItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description A name, 1 to 120 characters.
             * @example Skerry Point Marine Station
             */
            name: string;
            /**
             * @description A zone of the IANA time zone database.
             * @example Europe/Lisbon
             */
            timeZone: string;
            /**
             * @description The currency of all prices, by its letters of ISO 4217; nothing is ever converted.
             * @example EUR
             */
            currency: string;
            /**
             * @description Above sea level; sets the pressure of the air. [m; ft with `units=us`]
             * @example 10
             */
            elevation: number;
            /**
             * @description The price of electricity per kWh, or null.
             * @example 0.21
             */
            price: number | null;
            /**
             * @description Id of the tariff that prices go by, before `price`, where a request states neither; or null.
             * @example 0198f1c2
             */
            tariff: string | null;
            /**
             * @description What an hour of work costs, or null.
             * @example 30
             */
            labourRate: number | null;
        };
        /** @description The phases of a loop, whose id is that of the loop. */
        ScheduleItem: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of a tariff; null: the tariff or the price of the site.
             * @example 0198f1c2
             */
            tariff: string | null;
            /** @description In the order of entry. */
            phases: components["schemas"]["PhaseItem"][];
            emergency?: components["schemas"]["EmergencyItem"];
        };
        /** @description A part of the day, as it was entered. */
        PhaseItem: {
            /**
             * @description A name, 1 to 120 characters.
             * @example night
             */
            name: string;
            /**
             * @description Wall clock of the site at which it begins; it runs to the next phase's start. A time that clocks skip acts at the first instant after, one that they show twice at the first.
             * @example 22:00
             */
            from: string;
            /**
             * @description Days on which it begins; all where it is left out. A holiday of the tariff is a holiday and no weekday.
             * @example [
             *       "mon",
             *       "tue",
             *       "wed",
             *       "thu",
             *       "fri"
             *     ]
             */
            days?: ("mon" | "tue" | "wed" | "thu" | "fri" | "sat" | "sun" | "holiday")[];
            /**
             * @description Times the flow that each outlet of the loop requires.
             * @example 0.6
             */
            factor?: number;
            /** @description Required flows by outlet, in place of those of the loop; outlets that are not named keep their own. */
            requiredFlows?: {
                [key: string]: number;
            };
            volume?: components["schemas"]["VolumeDemand"];
            /** @description Outlets shut in this phase, by 0; 100 is as built. What is shut requires nothing. */
            openings?: {
                [key: string]: number;
            };
            /**
             * @description Minutes in which the setting runs from that of the phase before to this phase's.
             * @example 10
             */
            rampMinutes?: number;
            pulse?: components["schemas"]["Pulse"];
        };
        /** @description What must go on when the mains fail, as it was entered. */
        EmergencyItem: {
            /**
             * @description Times the required flows that keep the animals alive.
             * @example 0.3
             */
            factor: number;
            /**
             * @description What a battery gives to the pump. [kWh]
             * @example 1.2
             */
            batteryEnergy?: number;
        };
        /** @description What was computed once and is kept as it is, in SI; it comes in as it went out, or it is refused. */
        ComputedCopy: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /** @description Question and figures as they are stored. */
            document: {
                [key: string]: unknown;
            };
        };
        /** @description A routine check as it was entered. */
        MaintenanceTaskCopy: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description What is to be done, 1 to 120 characters, not unique.
             * @example Clean the intake screen
             */
            title: string;
            /**
             * @description What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.
             * @example screen-cleaning
             * @enum {string}
             */
            kind: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            /**
             * Format: duration
             * @description The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.
             * @example P1W
             */
            every: string;
            /**
             * @description Minutes of work each time.
             * @example 10
             */
            minutes: number;
            /**
             * @description What parts cost each time, in the site's currency.
             * @example 5
             */
            parts: number;
            /**
             * @description Id of the loop that it is of; either this or `pump`.
             * @example 0198f1c2
             */
            loop?: string;
            /**
             * @description Id of the pump that it is of; either this or `loop`.
             * @example 0198f1c3
             */
            pump?: string;
            /**
             * Format: date
             * @description Due for the first time.
             * @example 2026-12-01
             */
            firstDue: string;
        };
        /** @description One time that a check was done. */
        CompletionCopy: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of its check.
             * @example 0198f1c2
             */
            task: string;
            /**
             * Format: date-time
             * @description When it was done.
             * @example 2026-01-15T12:00:00.000Z
             */
            at: string;
            /**
             * Format: date
             * @description The day that the clocks of the site showed.
             * @example 2026-01-15
             */
            day: string;
            /**
             * @description Minutes that it took.
             * @example 10
             */
            minutes?: number;
            /**
             * @description What was seen or changed, 1 to 2000 characters.
             * @example Seal replaced.
             */
            note?: string;
        };
        /** @description A calibration of a loop that was applied once. */
        CalibrationCopy: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of its loop.
             * @example 0198f1c2
             */
            loop: string;
            /**
             * @description From 1 on.
             * @example 1
             */
            place: number;
            /**
             * Format: date-time
             * @description When it was applied.
             * @example 2026-01-15T12:00:00.000Z
             */
            appliedAt: string;
            /**
             * @description When it was undone; null while it is not.
             * @example 2026-01-15T12:00:00.000Z
             */
            undoneAt: string | null;
            /**
             * @description What of the loop it is about.
             * @example a81f
             */
            of: string;
            /**
             * @description Whether the loop goes by it.
             * @example true
             */
            inUse: boolean;
            /** @description What was applied. */
            calibration: {
                parameters: {
                    /** @enum {string} */
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    /**
                     * @description Its value.
                     * @example 1.04
                     */
                    value: number;
                    /**
                     * @description Its standard error.
                     * @example 1.04
                     */
                    standardError: number;
                    interval: {
                        /**
                         * @description Its low end.
                         * @example 1.04
                         */
                        low: number;
                        /**
                         * @description Its high end.
                         * @example 1.04
                         */
                        high: number;
                    };
                }[];
                factors: {
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    friction: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    head: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    power: number;
                };
                badEnd: {
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    friction: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    head: number;
                };
                pump: {
                    /**
                     * @description Id of its pump.
                     * @example 0198f1c2
                     */
                    id: string;
                    fit: {
                        [key: string]: unknown;
                    };
                };
                /**
                 * Format: date-time
                 * @description The first reading it rests on.
                 * @example 2026-01-15T12:00:00.000Z
                 */
                from: string;
                /**
                 * Format: date-time
                 * @description The last reading it rests on.
                 * @example 2026-01-15T12:00:00.000Z
                 */
                to: string;
                /**
                 * @description How many.
                 * @example 40
                 */
                readings: number;
                /**
                 * @description Of the formulas.
                 * @example 1
                 */
                modelVersion: string;
            };
        };
        /** @description Some of the readings of a loop. */
        ReadingsCopy: {
            /**
             * @description Given by the service.
             * @example 0198f1c2
             */
            id: string;
            /**
             * @description Counts the writes, from 1.
             * @example 1
             */
            version: number;
            /**
             * Format: date-time
             * @description When it was created, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            createdAt: string;
            /**
             * Format: date-time
             * @description When it was last written, in UTC.
             * @example 2026-01-15T12:00:00.000Z
             */
            updatedAt: string;
            /**
             * @description Id of its loop.
             * @example 0198f1c2
             */
            loop: string;
            /** @description In the order of time. */
            readings: components["schemas"]["Reading"][];
        };
        /** @description How many records of each kind were stored. */
        SiteCopyCounts: {
            /**
             * @description How many items of tariffs were stored.
             * @example 4
             */
            tariffs: number;
            /**
             * @description How many items of pumps were stored.
             * @example 4
             */
            pumps: number;
            /**
             * @description How many items of loops were stored.
             * @example 4
             */
            loops: number;
            /**
             * @description How many items of schedules were stored.
             * @example 4
             */
            schedules: number;
            /**
             * @description How many items of comparisons were stored.
             * @example 4
             */
            comparisons: number;
            /**
             * @description How many items of upgradePlans were stored.
             * @example 4
             */
            upgradePlans: number;
            /**
             * @description How many items of maintenanceTasks were stored.
             * @example 4
             */
            maintenanceTasks: number;
            /**
             * @description How many items of completions were stored.
             * @example 4
             */
            completions: number;
            /**
             * @description How many items of calibrations were stored.
             * @example 4
             */
            calibrations: number;
            /**
             * @description How many items of readings were stored.
             * @example 4
             */
            readings: number;
        };
        /** @description A site with all that it holds, as an export gives it. */
        SiteCopyInput: {
            /**
             * @description What the document is.
             * @example loopwright-site
             * @enum {string}
             */
            format: "loopwright-site";
            /**
             * @description The version of its form.
             * @example 1
             * @enum {number}
             */
            formatVersion: 1;
            site: components["schemas"]["SiteInput"];
            /**
             * @description Every tariff. Ids, versions and times are kept where they are stated.
             * @default []
             */
            tariffs?: components["schemas"]["TariffInput"][];
            /**
             * @description Every pump. Ids, versions and times are kept where they are stated.
             * @default []
             */
            pumps?: components["schemas"]["PumpInput"][];
            /**
             * @description Every loop. Ids, versions and times are kept where they are stated.
             * @default []
             */
            loops?: components["schemas"]["LoopInput"][];
            /**
             * @description The schedules of loops, each under the id of its loop. Ids, versions and times are kept where they are stated.
             * @default []
             */
            schedules?: components["schemas"]["ScheduleInput"][];
            /**
             * @description Every comparison, as it was made. Ids, versions and times are kept where they are stated.
             * @default []
             */
            comparisons?: components["schemas"]["ComputedCopyInput"][];
            /**
             * @description Every upgrade plan, as it was made. Ids, versions and times are kept where they are stated.
             * @default []
             */
            upgradePlans?: components["schemas"]["ComputedCopyInput"][];
            /**
             * @description Every routine check. Ids, versions and times are kept where they are stated.
             * @default []
             */
            maintenanceTasks?: components["schemas"]["MaintenanceTaskCopyInput"][];
            /**
             * @description Every time that a check was done. Ids, versions and times are kept where they are stated.
             * @default []
             */
            completions?: components["schemas"]["CompletionCopyInput"][];
            /**
             * @description Every calibration that was applied to a loop. Ids, versions and times are kept where they are stated.
             * @default []
             */
            calibrations?: components["schemas"]["CalibrationCopyInput"][];
            /**
             * @description The readings of loops, some together. Ids, versions and times are kept where they are stated.
             * @default []
             */
            readings?: components["schemas"]["ReadingsCopyInput"][];
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description What was computed once and is kept as it is, in SI; it comes in as it went out, or it is refused. */
        ComputedCopyInput: {
            /** @description Question and figures as they are stored. */
            document: {
                [key: string]: unknown;
            };
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A routine check as it was entered. */
        MaintenanceTaskCopyInput: {
            /**
             * @description What is to be done, 1 to 120 characters, not unique.
             * @example Clean the intake screen
             */
            title: string;
            /**
             * @description What it is a check of. A `wet-end-service` stands for the `service` that the pump states, and other figures count one of the two.
             * @default other
             * @example screen-cleaning
             * @enum {string}
             */
            kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
            /**
             * Format: duration
             * @description The interval, P1D to P10Y, as a duration of ISO 8601 without time of day: years and months, or weeks and days.
             * @example P1W
             */
            every: string;
            /**
             * @description Minutes of work each time.
             * @example 10
             */
            minutes: number;
            /**
             * @description What parts cost each time, in the site's currency.
             * @default 0
             * @example 5
             */
            parts?: number;
            /**
             * @description Id of the loop that it is of; either this or `pump`.
             * @example 0198f1c2
             */
            loop?: string;
            /**
             * @description Id of the pump that it is of; either this or `loop`.
             * @example 0198f1c3
             */
            pump?: string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
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
            /**
             * Format: date
             * @description The day on which it is due for the first time, by the calendar of the site. Entered as an instant with its offset, the day that the clocks of the site show then.
             * @example 2026-12-01
             */
            firstDue: string;
        };
        /** @description One time that a check was done. */
        CompletionCopyInput: {
            /**
             * @description Id of the check.
             * @example 0198f1c2
             */
            task: string;
            /**
             * Format: date-time
             * @description When it was done.
             * @example 2026-01-15T12:00:00Z
             */
            at: string;
            /**
             * Format: date
             * @description The day on which it was done.
             * @example 2026-01-15
             */
            day: string;
            /**
             * @description Minutes that it took.
             * @example 10
             */
            minutes?: number;
            /**
             * @description What was seen or changed, 1 to 2000 characters.
             * @example Seal replaced.
             */
            note?: string;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description A calibration of a loop that was applied once. */
        CalibrationCopyInput: {
            /**
             * @description Id of its loop.
             * @example 0198f1c2
             */
            loop: string;
            /**
             * @description From 1 on.
             * @example 1
             */
            place: number;
            /**
             * Format: date-time
             * @description When it was applied.
             * @example 2026-01-15T12:00:00.000Z
             */
            appliedAt: string;
            /**
             * @description When it was undone; null while it is not.
             * @example 2026-01-15T12:00:00.000Z
             */
            undoneAt: string | null;
            /**
             * @description What of the loop it is about.
             * @example a81f
             */
            of: string;
            /**
             * @description Whether the loop goes by it.
             * @example true
             */
            inUse: boolean;
            /** @description What was applied. */
            calibration: {
                parameters: {
                    /** @enum {string} */
                    name: "friction" | "head" | "power" | "frictionOverHead";
                    /**
                     * @description Its value.
                     * @example 1.04
                     */
                    value: number;
                    /**
                     * @description Its standard error.
                     * @example 1.04
                     */
                    standardError: number;
                    interval: {
                        /**
                         * @description Its low end.
                         * @example 1.04
                         */
                        low: number;
                        /**
                         * @description Its high end.
                         * @example 1.04
                         */
                        high: number;
                    };
                }[];
                factors: {
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    friction: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    head: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    power: number;
                };
                badEnd: {
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    friction: number;
                    /**
                     * @description A factor.
                     * @example 1.04
                     */
                    head: number;
                };
                pump: {
                    /**
                     * @description Id of its pump.
                     * @example 0198f1c2
                     */
                    id: string;
                    fit: {
                        [key: string]: unknown;
                    };
                };
                /**
                 * Format: date-time
                 * @description The first reading it rests on.
                 * @example 2026-01-15T12:00:00.000Z
                 */
                from: string;
                /**
                 * Format: date-time
                 * @description The last reading it rests on.
                 * @example 2026-01-15T12:00:00.000Z
                 */
                to: string;
                /**
                 * @description How many.
                 * @example 40
                 */
                readings: number;
                /**
                 * @description Of the formulas.
                 * @example 1
                 */
                modelVersion: string;
            };
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description Some of the readings of a loop. */
        ReadingsCopyInput: {
            /**
             * @description Id of its loop.
             * @example 0198f1c2
             */
            loop: string;
            /** @description In the order of time. */
            readings: components["schemas"]["ReadingInput"][];
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly id?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly version?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly createdAt?: unknown;
            /** @description Accepted, so that an answer can be sent back, and ignored. */
            readonly updatedAt?: unknown;
            /** @description If present, must be the units in force, as an answer states them. */
            units?: unknown;
        };
        /** @description The answer of a probe. */
        ProbeStatus: {
            /**
             * @description Always `ok`; anything else is a problem.
             * @enum {string}
             */
            status: "ok";
            /**
             * @description The version that runs.
             * @example 0.1.0
             */
            version: string;
        };
        /** @description A document of OpenAPI 3.1. */
        Specification: {
            [key: string]: unknown;
        };
    };
    responses: {
        /** @description `malformed-json`: The body is not JSON. `malformed-csv`: The body is not CSV. Write it as RFC 4180 says. `malformed-utf8`: The request is not UTF-8. `malformed-url`: The address is not well formed. Percent-encode it as UTF-8. `malformed-request`: The request is not HTTP. `cut-short`: The body broke off. Send all of it. `missing-body`: The request has no body. */
        Problem400: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `loopback-only`: Only programs on this machine are answered. Call by localhost, 127.0.0.1 or [::1], without a proxy and not from a page of another site. */
        Problem403: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `too-slow`: The request came too slowly. */
        Problem408: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `url-too-long`: The address is too long. */
        Problem414: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `headers-too-large`: Address and headers are too large. Send fewer or shorter headers. */
        Problem431: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `invalid-request`: The request does not hold together. See `errors`. `limit-exceeded`: The request is beyond a limit. See `limit` and `actual`. `no-requirement`: No outlet requires a flow. State a `requiredFlow`. `no-installed-pump`: The loop has no pump. Name one, or state `installed`. `not-calibrated`: The readings tell no factor. Take the readings that `nextReadings` names. `unsolved`: The loop could not be solved. Look for extreme lengths, bores or flows. */
        Problem422: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `internal-error`: The service has failed. Report `requestId`. */
        Problem500: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `unavailable`: The service is not ready. Try again after Retry-After. */
        Problem503: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `not-acceptable`: The answer has no such form. See the header Accept. */
        Problem406: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `not-found`: There is nothing here. `no-value`: The answer has no value there. */
        Problem404: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `body-too-large`: The body is too large. */
        Problem413: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `unsupported-media-type`: The body is of a type that is not read here. */
        Problem415: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `stale-version`: It has changed since it was read. Read it again and send its ETag in If-Match. */
        Problem412: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `version-required`: The version that is to be changed is not stated. Send the ETag in If-Match, or `*`. */
        Problem428: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `storage-full`: There is no room to store it. */
        Problem507: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description `in-use`: Others use it. Change or delete those in `usedBy` first. `not-empty`: The site is not empty. Import into a site without records. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The site. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
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
            /** @description The site. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of pumps. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The pump as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the pump. */
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The pump. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the pump. */
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
            /** @description The pump as it is stored. */
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
    deletePump: {
        parameters: {
            query?: {
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the pump. */
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The pump is gone. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The pumps as they are stored, in the order of the table. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the pump. */
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
            /** @description The pump as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the pump. */
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
            /** @description The pump as it is stored. */
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
                /** @description Setting of the table [%]; the highest where it is left out. */
                setting?: number;
                /** @description Rows of the table, from no flow to the largest entered one; 11 where it is left out. */
                points?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the pump. */
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The fits, their diagnostics, the table. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of loops. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The loop as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The loop. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the loop. */
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
            /** @description The loop as it is stored. */
            200: {
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The loop is gone. */
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
                /** @description Largest total flow of the table; one and a half times the required duty where it is left out. [L/h; gal/h with `units=us`] */
                flow?: number | string;
                /** @description Rows, from no flow to the largest; 1 is the largest alone, 21 where it is left out. */
                points?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The curve and the required duty. */
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
                /** @description Id of the pump; the installed one where it is left out. */
                pump?: string;
                /** @description Setting [%], on the grid or off it; the installed one for the installed pump, else the highest, where it is left out. */
                setting?: number;
                /** @description Tells how far the stream of each outlet keeps this velocity; that of its stated reach where it is left out. [m/s; ft/s with `units=us`] */
                velocity?: number | string;
                /** @description Equal pumps in parallel; 1 where it is left out. */
                count?: number;
                /** @description Money per kWh; the site's price where it is left out. Negative where feeding in is paid. */
                price?: number;
                /** @description Hours a day at the setting; standby for the rest. 24 where it is left out. */
                hoursPerDay?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The duty. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of tariffs. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The tariff as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the tariff. */
                tariffId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The tariff. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the tariff. */
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
            /** @description The tariff as it is stored. */
            200: {
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the tariff. */
                tariffId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The tariff is gone. */
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
                /** @description The year of the figures; the site's current one where it is left out. */
                year?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The schedule and its figures. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
            };
            header?: {
                /** @description The ETag that was read, or `*`. */
                "If-Match"?: string;
            };
            path: {
                /** @description The id of the loop. */
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
            /** @description The schedule as it is stored, and its figures. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Schedule"];
                    "text/csv": string;
                };
            };
            /** @description The schedule as it is stored, and its figures. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The schedule is gone. */
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
                /** @description The instant that is asked about, with its offset; now where it is left out. */
                at?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The setting, since when, until when, and the fallback. */
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
                /** @description The instant that is asked about, with its offset; now where it is left out. */
                at?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The steps, in order. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the pump. */
                pumpId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture, to be shown or printed as it is; it holds no script and refers to nothing. */
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
                /** @description Id of a stored pump; where it is left out the installed one, else the one that is recommended. */
                pump?: string;
                /** @description Setting [%]; where it is left out the installed one for the installed pump, else the one that is recommended, else the highest. */
                setting?: number;
                /** @description Equal pumps in parallel; 1 where it is left out. */
                count?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture, to be shown or printed as it is; it holds no script and refers to nothing. */
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
                /** @description A day of the site's calendar, 1971 to 2200; today where it is left out. */
                date?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture, to be shown or printed as it is; it holds no script and refers to nothing. */
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
                /** @description From this instant on, with its offset; from the first reading where it is left out. */
                from?: string;
                /** @description Before this instant, with its offset; to the last reading where it is left out. */
                to?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture, to be shown or printed as it is; it holds no script and refers to nothing. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the comparison. */
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The picture, to be shown or printed as it is; it holds no script and refers to nothing. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the comparison. */
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The page, complete in itself: no script, no reference to anything outside. */
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
                /** @description Ids of stored pumps to choose among, separated by commas; all stored pumps where it is left out. */
                pump?: string;
                /** @description Equal pumps in parallel; 1 where it is left out. */
                count?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The page, complete in itself: no script, no reference to anything outside. */
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
                /** @description From this instant on, with its offset; from the first reading where it is left out. */
                from?: string;
                /** @description Before this instant, with its offset; to the last reading where it is left out. */
                to?: string;
                /** @description Means of an hour by UTC, or of a day by the clocks of the site; hours and days without readings are left out. */
                by?: "hour" | "day";
                /** @description How many items a page has at most: 1 to 200, 50 where it is not stated; with `by` 1 to 1000, 1000 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of readings. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
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
            /** @description How many were taken in, and how many of these were merged. */
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
    getCondition: {
        parameters: {
            query?: {
                /** @description From this instant on, with its offset; from the first reading where it is left out. */
                from?: string;
                /** @description Before this instant, with its offset; to the last reading where it is left out. */
                to?: string;
                /** @description Money per kWh; the site's price where it is left out. Negative where feeding in is paid. */
                price?: number;
                /** @description What one cleaning costs; where it is left out, by the check of kind screen-cleaning of the loop or the service of its pump. */
                cleaningCost?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The verdict and what it rests on. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The calibrations. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: {
                /** @description The ETag that was read, or `*`. */
                "If-Match"?: string;
            };
            path: {
                /** @description The id of the loop. */
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
            /** @description The factors, their doubt, and what would lessen it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Calibration"];
                };
            };
            /** @description The factors, their doubt, and what would lessen it. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The calibration is no longer in use. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
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
            /** @description The cheapest pump and setting, the ranking, and why others do not serve. */
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
                /** @description Ids of stored pumps, separated by commas; all stored pumps where it is left out. */
                pump?: string;
                /** @description Equal pumps in parallel; 1 where it is left out. */
                count?: number;
                /** @description Money per kWh; the site's price where it is left out. Negative where feeding in is paid. */
                price?: number;
                /** @description Hours a day at the setting; standby for the rest. 24 where it is left out. */
                hoursPerDay?: number;
                /** @description Id of a stored tariff, in place of `price`. */
                tariff?: string;
                /** @description The pipework as it is, or with every branch throttled to its required flow. */
                balancing?: "as-built" | "trimmed";
                /** @description What the ranking goes by: the cost of a year's energy, or purchase, energy, service and repairs over the years of `lifeCycle`. */
                objective?: "energy-cost" | "life-cycle-cost";
                /** @description How many candidates the ranking tells of; 20 where it is left out. */
                rankingLimit?: number;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
                loopId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The cheapest pump and setting, the ranking, and why others do not serve. */
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
    sizeScreen: {
        parameters: {
            query?: {
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The least screen. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The leak in figures. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of comparisons. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
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
            /** @description The comparison as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the comparison. */
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The comparison. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the comparison. */
                comparisonId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The comparison is gone. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
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
            /** @description The bill, its total, and what it lacks. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The shelf, its confidence and the failure rate behind it. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of plans. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
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
            /** @description The plan as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the plan. */
                planId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The plan. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the plan. */
                planId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The plan is gone. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The site in figures. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description Only items of exactly this name. */
                name?: string;
                /** @description Only checks of this loop; an id that names none finds none. */
                loop?: string;
                /** @description Only checks of this pump; an id that names none finds none. */
                pump?: string;
                /** @description Only checks of this kind. */
                kind?: "bulkhead-inspection" | "screen-cleaning" | "wet-end-service" | "union-check" | "residual-current-test" | "other";
                /** @description Only checks that are due, overdue ones included; or only those that are not. */
                due?: boolean;
                /** @description Only checks that are overdue; or only those that are not. */
                overdue?: boolean;
                /** @description Only checks that are due on this day or before. */
                dueBy?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of checks. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description The check as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the task. */
                taskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The check. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the task. */
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
            /** @description The check as it is stored. */
            200: {
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the task. */
                taskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The check is gone. */
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
                /** @description How many items a page has at most; 50 where it is not stated. */
                limit?: number;
                /** @description The `next` of the page before. */
                cursor?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the task. */
                taskId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page of completions. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the task. */
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
            /** @description The completion as it is stored. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path: {
                /** @description The id of the task. */
                taskId: string;
                /** @description The id of the completion. */
                completionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The completion. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header: {
                /** @description The ETag that was read, or `*`. */
                "If-Match": string;
            };
            path: {
                /** @description The id of the task. */
                taskId: string;
                /** @description The id of the completion. */
                completionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The completion is gone. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path: {
                /** @description The id of the loop. */
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
            /** @description The checks that were made. */
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
                /** @description Only checks of this loop; an id that names none finds none. */
                loop?: string;
                /** @description Only checks of this pump; an id that names none finds none. */
                pump?: string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The calendar. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The table. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The table. */
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
                /** @description Temperature of the water; 25 degC where it is left out. [degC; degF with `units=us`] */
                temperature?: number | string;
                /** @description Salinity of the water; 35 g/kg where it is left out. [g/kg] */
                salinity?: number | string;
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The properties. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description The form of the answer; wins over the header Accept. */
                format?: "json" | "csv";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The catalogue. */
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
                /** @description Whether readings are among it; `true` where it is left out. A site with too many for one document gives them loop by loop, at `/v1/loops/{loopId}/readings`. */
                readings?: "true" | "false";
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
                units?: "metric" | "us";
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The site with all that it holds. */
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
                /** @description The units of numbers, in and out; `metric` where it is not stated. */
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
            /** @description How much was stored. */
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
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The process lives. */
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
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The service serves. */
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
                /** @description JSON pointer (RFC 6901) to one value of the answer, which then comes as text/plain: a number in its shortest decimal notation, a string bare. */
                pointer?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The document. */
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
