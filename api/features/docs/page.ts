/** Holds the reference page: its frame, its own script, its own style. */

/** Where each part is served, all under the page's own address. */
export const DOCS_PATHS = {
  page: '/docs',
  bundle: '/docs/bundle.js',
  start: '/docs/start.js',
  packageStyle: '/docs/package.css',
  style: '/docs/style.css',
} as const;

export const DOCS_PAGE = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Loopwright: reference</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${DOCS_PATHS.packageStyle}">
<link rel="stylesheet" href="${DOCS_PATHS.style}">
</head>
<body>
<main>
<h1>Loopwright: reference</h1>
<noscript><p>This page is drawn by a script. The document that it shows is at <a href="/openapi.json">/openapi.json</a>.</p></noscript>
<div id="reference"></div>
</main>
<script src="${DOCS_PATHS.bundle}"></script>
<script src="${DOCS_PATHS.start}"></script>
</body>
</html>
`;

/**
 * Nothing is asked of any other host: no validator, no fonts, no pictures. The heading of an operation is a button, so what
 * would be a link inside of it is plain text; its address still opens it. There is one server: the one that gave the page.
 * Where an example names a loop, a pump or a tariff, or an address needs an id, that of the first stored one is put in, so that
 * it works unchanged. Fields get names, and texts that scroll can be reached by the keyboard.
 */
export const DOCS_START = `'use strict';
const plain = {
  wrapComponents: {
    DeepLink: (_original, system) => ({ text, children }) =>
      system.React.createElement('span', null, text === undefined ? children : text),
    ServersContainer: () => () => null,
  },
};
const collections = {
  loop: '/v1/loops',
  pump: '/v1/pumps',
  tariff: '/v1/tariffs',
  task: '/v1/maintenance-tasks',
  comparison: '/v1/comparisons',
  plan: '/v1/upgrade-plans',
};
const firstId = async (path) => {
  const answer = await fetch(path + '?limit=1');
  return answer.ok ? (await answer.json()).items[0]?.id : undefined;
};
const putIn = (ids, value) => {
  if (typeof value !== 'object' || value === null) return;
  for (const [name, member] of Object.entries(value)) {
    if (typeof member === 'string' && typeof ids[name] === 'string') value[name] = ids[name];
    else putIn(ids, member);
  }
};
const withStoredIds = (spec, ids) => {
  for (const item of Object.values(spec.paths)) {
    for (const { parameters = [], requestBody } of Object.values(item)) {
      for (const parameter of parameters) {
        const id = parameter.in === 'path' ? ids[parameter.name.replace(/Id$/, '')] : undefined;
        if (id !== undefined) parameter.example = id;
      }
      for (const { examples = {} } of Object.values(requestBody?.content ?? {})) putIn(ids, examples);
    }
  }
  return spec;
};
const show = async () => {
  const spec = await (await fetch('/openapi.json')).json();
  const found = await Promise.all(Object.entries(collections).map(async ([name, path]) => [name, await firstId(path)]));
  SwaggerUIBundle({
    spec: withStoredIds(spec, Object.fromEntries(found)),
    dom_id: '#reference',
    deepLinking: true,
    validatorUrl: null,
    docExpansion: 'list',
    defaultModelsExpandDepth: -1,
    syntaxHighlight: false,
    plugins: [() => plain],
  });
};
show();
const names = [
  ['textarea.body-param__text', () => 'Request body'],
  ['select.examples-select-element', () => 'Example'],
  ['select.content-type', () => 'Media type'],
  ['.parameters-col_description :is(select, input, textarea)', (field) =>
    field.closest('tr')?.dataset.paramName ?? 'Request body'],
];
const nameFields = () => {
  for (const [selector, nameOf] of names)
    for (const field of document.querySelectorAll(selector))
      if (!field.hasAttribute('aria-label')) field.setAttribute('aria-label', nameOf(field));
  for (const text of document.querySelectorAll('pre.microlight')) text.tabIndex = 0;
};
new MutationObserver(nameFields).observe(document.getElementById('reference'), { childList: true, subtree: true });
`;

/** Colours with a contrast of 4.5 to 1 and above, where the package's own have less. */
export const DOCS_STYLE = `body { margin: 0; background: #fff; color: #1b1b1b; }
main > h1 { max-width: 1460px; margin: 1rem auto 0; padding: 0 20px; font: 600 1.6rem sans-serif; }
.swagger-ui .info .title small, .swagger-ui .info .title small.version-stamp { background: #3b4151; }
.swagger-ui .info .title small pre.version { color: #fff; }
.swagger-ui .info .base-url, .swagger-ui .info .url, .swagger-ui .info a, .swagger-ui a.nostyle { color: #1b1b1b; }
.swagger-ui .info a { text-decoration: underline; }
.swagger-ui .parameter__in, .swagger-ui .parameter__type { color: #3b4151; }
.swagger-ui .btn.cancel { color: #a40000; border-color: #a40000; }
.swagger-ui .btn.execute, .swagger-ui .download-contents { color: #fff; background: #24507e; border-color: #24507e; }
.swagger-ui .opblock[class] .opblock-summary-method { color: #fff; background: #3b4151; }
`;
