/** LibreOffice Calc started without a window, with the functions of the client and a driver in a profile of its own. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const PROGRAM = '/usr/bin/soffice';
const TIMEOUT_MS = 120_000;

/** Why there is no Calc here; undefined where there is one. */
export const noCalc: string | undefined = existsSync(PROGRAM)
  ? undefined
  : `${PROGRAM} is not there (Debian: apt-get install libreoffice-calc)`;

const FUNCTIONS = readFileSync(
  new URL('../../openapi/clients/spreadsheet/loopwright.bas', import.meta.url),
  'utf8',
);

// Loads with the formulas computed anew, and writes the cells as they are, not as they are shown; J1 counts the numbers.
const DRIVER = `Sub Recalculate(sIn As String, sOut As String)
  Dim a(2) As New com.sun.star.beans.PropertyValue
  a(0).Name = "Hidden" : a(0).Value = True
  a(1).Name = "UpdateDocMode" : a(1).Value = com.sun.star.document.UpdateDocMode.FULL_UPDATE
  a(2).Name = "MacroExecutionMode" : a(2).Value = 4
  Dim d As Object
  d = StarDesktop.loadComponentFromURL(ConvertToURL(sIn), "_blank", 0, a())
  d.calculateAll()
  Wait 500
  d.calculateAll()
  d.Sheets.getByIndex(0).getCellByPosition(9, 0).setFormula("=COUNT(D4:H1000)")
  Dim s(1) As New com.sun.star.beans.PropertyValue
  s(0).Name = "FilterName" : s(0).Value = "Text - txt - csv (StarCalc)"
  s(1).Name = "FilterOptions" : s(1).Value = "44,34,76,1,,0,false,false,false"
  d.storeToURL(ConvertToURL(sOut), s())
  d.close(True)
End Sub
`;

const escaped = (source: string): string =>
  source.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const heading = (element: string, dtd: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE ${element} PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "${dtd}.dtd">\n`;

const SCRIPT = 'xmlns:script="http://openoffice.org/2000/script"';
const LIBRARY = 'xmlns:library="http://openoffice.org/2000/library"';

const moduleText = (name: string, source: string): string =>
  `${heading('script:module', 'module')}<script:module ${SCRIPT} script:name="${name}" script:language="StarBasic">${escaped(source)}</script:module>\n`;

const LIBRARIES = `${heading('library:libraries', 'libraries')}<library:libraries ${LIBRARY} xmlns:xlink="http://www.w3.org/1999/xlink"><library:library library:name="Standard" library:link="false"/></library:libraries>\n`;

const elements = (names: readonly string[]): string =>
  `${heading('library:library', 'library')}<library:library ${LIBRARY} library:name="Standard" library:readonly="false" library:passwordprotected="false">${names.map((name) => `<library:element library:name="${name}"/>`).join('')}</library:library>\n`;

const setting = (path: string, name: string, value: string): string =>
  `<item oor:path="${path}"><prop oor:name="${name}" oor:op="fuse"><value>${value}</value></prop></item>`;

// A profile that counts as set up, or the first start would lay its own modules over these. Cells of a trusted folder alone
// may ask for what is outside of the sheet.
const registry = (folder: string): string => `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
${setting('/org.openoffice.Setup/Office', 'ooSetupInstCompleted', 'true')}
${setting('/org.openoffice.Office.Common/Security/Scripting', 'MacroSecurityLevel', '1')}
${setting('/org.openoffice.Office.Common/Security/Scripting', 'SecureURL', `<it>file://${folder}</it>`)}
</oor:items>
`;

function writeProfile(profile: string, folder: string): void {
  const standard = join(profile, 'user', 'basic', 'Standard');
  mkdirSync(standard, { recursive: true });
  writeFileSync(join(profile, 'user', 'registrymodifications.xcu'), registry(folder));
  writeFileSync(join(profile, 'user', 'basic', 'script.xlc'), LIBRARIES);
  writeFileSync(join(profile, 'user', 'basic', 'dialog.xlc'), LIBRARIES);
  writeFileSync(join(standard, 'script.xlb'), elements(['Loopwright', 'Driver']));
  writeFileSync(join(standard, 'dialog.xlb'), elements([]));
  writeFileSync(join(standard, 'Loopwright.xba'), moduleText('Loopwright', FUNCTIONS));
  writeFileSync(join(standard, 'Driver.xba'), moduleText('Driver', DRIVER));
}

/** The cells of a sheet as CSV, computed anew; `folder` is for this call alone. */
export async function recalculated(sheet: string, folder: string): Promise<string> {
  const profile = join(folder, 'profile');
  writeProfile(profile, folder);
  const output = join(folder, 'cells.csv');
  // A group of its own: the program that starts is a script around the one that works.
  const child = spawn(
    PROGRAM,
    [
      '--headless',
      '--norestore',
      '--nologo',
      `-env:UserInstallation=file://${profile}`,
      `macro:///Standard.Driver.Recalculate("${sheet}","${output}")`,
    ],
    { detached: true, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
  }
  const stop = () => {
    try {
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL');
    } catch {
      // It has ended by itself.
    }
  };
  const timer = setTimeout(stop, TIMEOUT_MS);
  await once(child, 'close');
  clearTimeout(timer);
  stop();
  if (!existsSync(output)) throw new Error(`no cells were written: ${said}`);
  return readFileSync(output, 'utf8');
}
