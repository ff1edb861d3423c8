import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvRows } from '../../api/http/csv-rows.ts';
import { dutyPoint } from '../../models/duty/duty-point.ts';
import { requiredDuty } from '../../models/network/required-duty.ts';
import { bestEfficiencyPoint } from '../../models/pump/best-efficiency.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import { expectValue } from '../curves/expect-value.ts';
import { expectClose } from '../expect-close.ts';
import { loopModel, manifest, pumpModel } from './demo-world.ts';
import { exampleJson, exampleText } from './read-example.ts';

const files = readdirSync(new URL('../../openapi/examples/', import.meta.url));
const systemOf = (file: string) => (file.endsWith('-us.json') ? 'us' : 'metric');
const starting = (prefix: string) => files.filter((file) => file.startsWith(prefix));

describe('the examples of pumps', () => {
  it.each(starting('pump-'))('%s fits', (file) => {
    const { fit } = pumpModel(file, systemOf(file));
    expect(fit.headCurve.r2).toBeGreaterThan(0.999);
    expect(fit.powerLaw.exponent).toBeGreaterThan(2.5);
    expect(fit.powerLaw.exponent).toBeLessThan(3.3);
  });

  // What small mains pumps reach from wire to water is common practice, not a published bound.
  it.each(['pump-inline-60.json', 'pump-canister-120.json', 'pump-canister-600.json'])(
    '%s peaks where a pump of its size may',
    (file) => {
      const { fit } = pumpModel(file);
      const peak = bestEfficiencyPoint(fit, { density: 1023.3 });
      expect(peak?.efficiency).toBeGreaterThan(0.25);
      expect(peak?.efficiency).toBeLessThan(0.45);
      expect(peak?.flow).toBeGreaterThan(0.4 * fit.headCurve.range.max);
      expect(peak?.flow).toBeLessThan(0.8 * fit.headCurve.range.max);
    },
  );
});

describe('the examples of loops', () => {
  it.each(starting('loop-'))('%s compiles and can be served', (file) => {
    expect(requiredDuty(loopModel(file, systemOf(file)).system)).not.toBeNull();
  });

  it('says nearly the same in US units', () => {
    const metric = dutyOn(loopModel('loop-touch-pool.json'), pumpModel('pump-canister-120.json'));
    const us = dutyOn(
      loopModel('loop-touch-pool-us.json', 'us'),
      pumpModel('pump-canister-120-us.json', 'us'),
    );
    expectClose(us.flow, metric.flow, { relative: 0.03 });
    expectClose(us.power, metric.power, { relative: 0.03 });
  });

  it('says nearly the same with a unit behind each number', () => {
    const pump = pumpModel('pump-canister-250.json');
    const numbers = dutyOn(loopModel('loop-seahorse-bank.json'), pump);
    const texts = dutyOn(loopModel('loop-seahorse-bank-text.json'), pump);
    expectClose(texts.flow, numbers.flow, { relative: 0.03 });
  });

  it('says nearly the same of raceways by pipework and by three measured points', () => {
    const pump = pumpModel('pump-canister-600.json');
    const piped = dutyOn(loopModel('loop-nursery-raceways.json'), pump);
    const measured = dutyOn(loopModel('loop-system-curve.json'), pump);
    expectClose(measured.flow, piped.flow, { relative: 0.02 });
    expectClose(measured.head, piped.head, { relative: 0.02 });
  });
});

const dutyOn = (loop: ReturnType<typeof loopModel>, pump: ReturnType<typeof pumpModel>) =>
  dutyPoint(loop, pumpAtSetting(pump, { setting: 80, count: 1 }));

describe('the examples of recommendations', () => {
  const loops = new Map<string, unknown>(
    manifest.loops.map(({ loop }) => [exampleJson(loop).name, exampleJson(loop)]),
  );
  const pumps = new Map<string, unknown>(
    manifest.pumps.map((file) => [exampleJson(file).name, exampleJson(file)]),
  );

  it.each(starting('recommendation-'))('%s is about the loop and the pumps of the other files', (file) => {
    const { loop, pumps: asked } = exampleJson(file);
    expect(loop).toEqual(loops.get(loop.name));
    for (const entry of asked) {
      const pump = entry.pump ?? entry;
      expect(pump).toEqual(pumps.get(pump.name));
    }
  });
});

describe('the examples of points as CSV', () => {
  const head = {
    flow: { quantity: 'flow', required: true },
    head: { quantity: 'head', required: true },
    setting: { quantity: 'setting', required: false },
  } as const;
  const power = {
    setting: { quantity: 'setting', required: true },
    power: { quantity: 'power', required: true },
    flow: { quantity: 'flow', required: false },
  } as const;

  it('repeat the points of the pump', () => {
    const { headPoints, powerPoints } = exampleJson('pump-canister-120.json');
    const heads = expectValue(csvRows(exampleText('head-points.csv'), { columns: head, rowsMax: 500 }));
    const powers = expectValue(csvRows(exampleText('power-points.csv'), { columns: power, rowsMax: 500 }));
    expect(heads.rows).toEqual(headPoints.map((point: object) => ({ setting: 100, ...point })));
    expect(powers.rows).toEqual(powerPoints);
  });

  it('name another unit in the header', () => {
    const heads = expectValue(csvRows(exampleText('head-points-gal.csv'), { columns: head, rowsMax: 500 }));
    const powers = expectValue(
      csvRows(exampleText('power-points-gal.csv'), { columns: power, rowsMax: 500 }),
    );
    expect(heads.rows[1]).toEqual({ flow: '660 gal/h', head: '13.1 ft', setting: 100 });
    expect(powers.rows[1]).toEqual({ setting: 100, power: 112, flow: '1050 gal/h' });
  });
});

describe('the manifest of the demo', () => {
  it('names files that exist and settings that the pump has', () => {
    const named = [manifest.site, ...manifest.pumps, ...manifest.loops.map(({ loop }) => loop)];
    expect(files).toEqual(expect.arrayContaining(named));
    for (const { installed } of manifest.loops) {
      expect(manifest.pumps).toContain(installed.pump);
      const { min, max, step } = exampleJson(installed.pump).settings;
      expect((installed.setting - min) % step).toBe(0);
      expect(installed.setting).toBeLessThanOrEqual(max);
    }
  });
});
