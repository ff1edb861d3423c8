/** Makes a schema take null besides its values. */
import { z } from '@hono/zod-openapi';

/** A union instead of zod's own `nullable`, which would change a registered schema for everybody who uses it. */
export const nullable = <S extends z.ZodType>(schema: S) => z.union([schema, z.null()]);
