/** Makes the OpenAPI document of the service. */
import type { Api } from '../../http/api.ts';
import { withFormsTogether } from './component-forms.ts';
import { withDescribedDefaults } from './described-defaults.ts';
import { describeNullables } from './described-nullables.ts';
import { withNamedObjects } from './inline-objects.ts';
import { isNode } from './json-tree.ts';
import { TAGS } from './tags.ts';

const DESCRIPTION = [
  'Chooses pumps for closed loops of water, finds the setting that just serves every outlet, and says what it costs.',
  'Quantities in requests are numbers in the units in force (`units=metric` or `units=us`) or strings such as `"1500 gal/h"`;',
  'answers are numbers, rounded to six significant digits where they are computed.',
  'Ranges, defaults and examples in this document are in metric units.',
  'Errors are problems of RFC 9457.',
].join(' ');

// The type of the generator's configuration is that of OpenAPI 3.0, which knows no identifier.
const LICENSE = { license: { name: 'All rights reserved', identifier: 'LicenseRef-AllRightsReserved' } };

type Document = ReturnType<Api['app']['getOpenAPI31Document']>;

const isDocument = (value: unknown): value is Document => isNode(value) && 'openapi' in value;

function settled(document: Document): Document {
  // Its schemas are shared by later readings of the document, and this step changes them in place.
  const own = structuredClone(document);
  describeNullables(own, own.components?.schemas ?? {});
  const changed = withNamedObjects(withFormsTogether(withDescribedDefaults({ ...own })));
  if (!isDocument(changed)) throw new Error('invariant: no document of OpenAPI');
  return changed;
}

export const openApiDocument = ({ app, deps }: Api): Document =>
  settled(
    app.getOpenAPI31Document({
      openapi: '3.1.0',
      info: {
        title: 'Loopwright',
        version: deps.version,
        description: DESCRIPTION,
        contact: { name: 'Loopwright' },
        ...LICENSE,
      },
      servers: [{ url: '/', description: 'The service that gave this document.' }],
      // No keys yet: callers on this machine alone are answered.
      security: [],
      tags: [...TAGS],
    }),
  );
