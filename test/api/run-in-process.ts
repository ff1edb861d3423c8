/** A process of the service with an app of two routes: one that answers at once, one that never catches its error. */
import { run } from '../../api/run.ts';

await run(({ store, newId, version }) => ({
  async fetch(request) {
    if (new URL(request.url).pathname === '/bug') {
      setTimeout(() => Promise.reject(new Error('a planted bug')), 1);
    }
    await store.ping();
    return Response.json({ id: newId(), version });
  },
}));
