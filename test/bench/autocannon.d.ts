/** The part of the load generator's interface that is used here; it brings no types of its own. */
declare module 'autocannon' {
  interface Outgoing {
    readonly body: string;
  }

  interface Options {
    readonly url: string;
    readonly method: 'GET' | 'POST';
    readonly headers: Readonly<Record<string, string>>;
    readonly body: string;
    readonly connections: number;
    /** Seconds. */
    readonly duration: number;
    /** Changes each request before it leaves; all that the options state stays where it is not changed. */
    readonly requests?: readonly { readonly setupRequest: (request: Outgoing) => Outgoing }[];
  }

  interface Load {
    readonly requests: { readonly total: number };
    readonly duration: number;
    readonly errors: number;
    readonly non2xx: number;
  }

  export default function autocannon(options: Options): Promise<Load>;
}
