/** Shows a loop with its installed pumps as its meters do, as entered and with faults. */
import { findRoot } from '../../curves/find-root.ts';
import { hasCheckValves, onePumpDown } from '../duty/one-pump-down.ts';
import { limitingTotal } from '../network/limiting-total.ts';
import { pumpAtSetting } from '../pump/pump-at-setting.ts';
import { GRADES } from '../pump/tolerance-grades.ts';
import { HEAD_TOLERANCE_ASSUMED } from '../readings/measure.ts';
import { branchFaults, type Faulted, faultedStations, flowBehind } from './faulted-station.ts';
import { FAULTS, type Fault, type Held, type MeteredLoop, type Shown } from './metered-loop.ts';
import { type Predicted, predictedAt, pressurePerHead, type Station, settingsMost } from './predicted.ts';

/** Throws `SolveFailure`, as all that it answers do. */
export function stationOnMeters(station: Station, setting: number): MeteredLoop {
  const { loop, pump, count } = station;
  const { system, network } = loop;
  const { grade, settings, standbyPower } = pump.entered;
  const head = grade === undefined ? null : GRADES[grade].head;
  const shown = new Map<number, Shown | null>();
  const shownAt = (asked: number): Shown | null => {
    const known = shown.get(asked);
    const found = known === undefined ? shownOf(station, asked, predictedAt(station, asked)) : known;
    shown.set(asked, found);
    return found;
  };
  const entered = shownAt(setting);
  const faulted = (fault: Fault): readonly Faulted[] =>
    entered === null ? [] : faultedStations(station, fault, { setting, entered });
  return {
    ...{ setting, settings, count, shownAt, outlets: system.outlets },
    standbyPower: count * standbyPower,
    pressurePerHead: pressurePerHead(loop),
    headTolerance: head === null ? HEAD_TOLERANCE_ASSUMED : Math.max(head.below, head.above),
    settingsMost: settingsMost(station),
    faults: [
      ...FAULTS.flatMap((cause): Fault[] => (cause === 'clogged-branch' ? [] : [{ cause }])),
      ...(network === null ? [] : branchFaults(network)),
    ],
    shownWith: (fault) =>
      faulted(fault).flatMap(({ magnitude, station: one, predicted }) => {
        const found = shownOf(one, setting, predicted);
        return found === null ? [] : [{ magnitude, shown: found }];
      }),
    shownWithPumps: (running) => shownWithPumps(station, { setting, running }),
    heldWith: (fault) =>
      entered === null
        ? []
        : faulted(fault).map((one) => ({
            magnitude: one.magnitude,
            ...held(one.station, { fault, setting, wanted: flowBehind(station, fault, entered) }),
          })),
    limitingTotal: (isAsked) =>
      entered === null
        ? null
        : limitingTotal(system, entered.flow, (place) => isAsked(system.outlets[place]?.name ?? '')),
  };
}

const shownOf = ({ pump, count }: Station, setting: number, predicted: Predicted | null): Shown | null =>
  predicted === null
    ? null
    : { ...predicted, shutoffHead: pumpAtSetting(pump, { setting, count }).headAt(0).head };

/** Without check valves water runs back through the pump that stands still. */
function shownWithPumps(
  station: Station,
  { setting, running }: { readonly setting: number; readonly running: number },
): Shown | null {
  const fewer = { ...station, count: running };
  const shown = shownOf(fewer, setting, predictedAt(fewer, setting));
  if (shown === null || hasCheckValves(station.loop)) return shown;
  const down = onePumpDown(station.loop, station.pump, { setting, count: station.count });
  return down === null ? null : { ...shown, ...down, suctionPressure: null, dischargePressure: null };
}

function held(
  station: Station,
  { fault, setting, wanted }: { readonly fault: Fault; readonly setting: number; readonly wanted: number },
): Omit<Held, 'magnitude'> {
  const spareAt = (tried: number) => {
    const predicted = predictedAt(station, tried);
    return predicted === null ? -1 : flowBehind(station, fault, predicted) / wanted - 1;
  };
  const { max } = station.pump.entered.settings;
  const spare = spareAt(max);
  const root =
    spareAt(setting) >= 0 || spare <= 0
      ? null
      : findRoot({ evaluate: (tried) => ({ value: spareAt(tried) }), low: setting, high: max });
  const lowest = root?.ok === true ? root.value.root : spare <= 0 ? max : setting;
  return { spare, power: predictedAt(station, lowest)?.power ?? 0 };
}
