/** A facility whose clock a test sets, with calls about its routine checks. */
import { expect } from 'vitest';
import { type Facility, facility } from '../schedule/facility.ts';

export interface Upkeep extends Facility {
  /** The instant that the service's clock shows from now on. */
  setClock(time: string): void;
  addTask(facts?: object): Promise<string>;
  complete(id: string, at: string, facts?: object): ReturnType<Facility['send']>;
  read(path: string): Promise<ReturnType<JSON['parse']>>;
}

export async function upkeep(zone = 'Europe/Lisbon'): Promise<Upkeep> {
  let now = Date.parse('2026-01-15T12:00:00Z');
  const lab = await facility({ zone, change: { clock: () => new Date(now) } });
  return {
    ...lab,
    setClock: (time) => {
      now = Date.parse(time);
    },
    async addTask(facts = {}) {
      const response = await lab.send('POST', '/v1/maintenance-tasks', { ...task(lab.loop), ...facts });
      const answer = await response.json();
      expect(response.status, JSON.stringify(answer)).toBe(201);
      return answer.id;
    },
    complete: (id, at, facts = {}) =>
      lab.send('POST', `/v1/maintenance-tasks/${id}/completions`, { at, ...facts }),
    async read(path) {
      const response = await lab.send('GET', path);
      expect(response.status).toBe(200);
      return await response.json();
    },
  };
}

export const task = (loop: string): Record<string, unknown> => ({
  name: 'Clean the intake screen',
  loop,
  every: 'P1M',
  minutes: 10,
  parts: 5,
  firstDue: '2026-02-01',
});
