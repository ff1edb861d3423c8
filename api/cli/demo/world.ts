/** Posts the demo's world: the pumps and loops of Skerry Point Marine Station. */
import { z } from '@hono/zod-openapi';
import { example } from '../../http/examples.ts';
import type { Service } from './call.ts';

const manifestSchema = z.object({
  site: z.string(),
  pumps: z.array(z.string()),
  loops: z.array(
    z.object({
      loop: z.string(),
      installed: z.looseObject({ pump: z.string() }),
    }),
  ),
});

const namedSchema = z.looseObject({ name: z.string() });
const recordSchema = z.object({ id: z.string(), name: z.string() });
const listSchema = z.object({ items: z.array(recordSchema) });
const siteSchema = z.object({ version: z.int() });

export type DemoLoop = z.output<typeof recordSchema>;

const exampleNamed = (file: string) => namedSchema.parse(example(file.replace(/\.json$/, '')));

/** Of `loop-kelp-flume.json` it is `kelp-flume`. */
const keyOf = (file: string): string => file.replace(/^[a-z]+-/, '').replace(/\.json$/, '');

/** The record of this name in a collection, made from the document where there is none yet. */
async function findOrCreate(
  service: Service,
  collection: string,
  document: z.output<typeof namedSchema> & { readonly key?: string },
): Promise<DemoLoop> {
  const list = listSchema.parse(await service.get(`${collection}?name=${encodeURIComponent(document.name)}`));
  return list.items[0] ?? recordSchema.parse(await service.send('POST', collection, document));
}

/** Posts what is not there yet and leaves the rest alone, so that a second demo shows what the first left behind. */
export async function loadWorld(service: Service): Promise<readonly DemoLoop[]> {
  const manifest = manifestSchema.parse(example('demo'));
  const site = siteSchema.parse(await service.get('/v1/site'));
  if (site.version === 1) await service.send('PUT', '/v1/site', exampleNamed(manifest.site));
  for (const file of manifest.pumps)
    await findOrCreate(service, '/v1/pumps', { ...exampleNamed(file), key: keyOf(file) });
  const loops: DemoLoop[] = [];
  for (const { loop, installed } of manifest.loops) {
    const pump = keyOf(installed.pump);
    const document = { ...exampleNamed(loop), key: keyOf(loop), installed: { ...installed, pump } };
    loops.push(await findOrCreate(service, '/v1/loops', document));
  }
  return loops;
}

/** The flume with its pipes still to be chosen; nothing is stored of it. */
export const flumeDesign = (service: Service): Promise<unknown> =>
  service.send('POST', '/v1/designs', example('design-kelp-flume'));

/** Three small pumps against a larger one on the seahorse bank: made once. */
export async function bankComparison(service: Service): Promise<unknown> {
  const { id } = await findOrCreate(
    service,
    '/v1/comparisons',
    exampleNamed('comparison-seahorse-bank.json'),
  );
  return service.get(`/v1/comparisons/${id}`);
}
