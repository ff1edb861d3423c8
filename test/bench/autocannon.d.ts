/** The part of the load generator's interface that is used here; it brings no types of its own. */
declare module 'autocannon' {
  interface Options {
    readonly url: string;
    readonly method: 'GET' | 'POST';
    readonly headers: Readonly<Record<string, string>>;
    readonly body: string;
    readonly connections: number;
    /** Seconds. */
    readonly duration: number;
  }

  interface Load {
    readonly requests: { readonly total: number };
    readonly duration: number;
    readonly errors: number;
    readonly non2xx: number;
  }

  export default function autocannon(options: Options): Promise<Load>;
}
