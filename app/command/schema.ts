/** Writes the published JSON Schema of the file from the schema in code: npm run schema. */
import { writeFileSync } from 'node:fs';
import { jsonSchemaText } from '../../src/game/json-schema.ts';

const path = new URL('../../public/latchmap.schema.json', import.meta.url);
writeFileSync(path, jsonSchemaText());
console.log('Wrote public/latchmap.schema.json');
