/** Names the file of a worker thread, among the sources and among what is built of them alike. */
export const WORKER_FILE = new URL(
  import.meta.url.endsWith('.ts') ? './worker.ts' : './worker.js',
  import.meta.url,
);
