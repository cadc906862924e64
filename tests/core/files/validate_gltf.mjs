// usage: node validate_gltf.mjs VALIDATOR_FOLDER FILE...
// Prints every issue the glTF validator finds; exit 1 when there is an error, a warning or an info.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';
import path from 'node:path';

const [folder, ...files] = process.argv.slice(2);
const validator = createRequire(path.resolve(folder) + path.sep)('gltf-validator');

let failed = false;
for (const file of files) {
  const report = await validator.validateBytes(new Uint8Array(readFileSync(file)), {
    uri: path.basename(file),
    externalResourceFunction: async (uri) =>
      new Uint8Array(readFileSync(path.join(path.dirname(file), decodeURIComponent(uri)))),
  });
  const { numErrors, numWarnings, numInfos, messages } = report.issues;
  console.log(`${file}: ${numErrors} errors, ${numWarnings} warnings, ${numInfos} infos`);
  for (const message of messages) console.log(JSON.stringify(message));
  failed ||= numErrors + numWarnings + numInfos > 0;
}
process.exit(failed ? 1 : 0);
