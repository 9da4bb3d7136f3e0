/** The document's shapes as a JSON Schema, for programs of others. What a shape cannot say stays with the reader. */
import * as z from 'zod/mini';
import { gameFile } from './schema.ts';

export function jsonSchemaText(): string {
  const schema = z.toJSONSchema(gameFile, { io: 'input' });
  const described = {
    title: 'Latchmap game',
    description:
      'A lock-box escape game. Fields that are not named here are kept. That ends and holders exist, that holders form no ring, which links are legal and that estimates are in order is checked on reading.',
  };
  const { $schema, ...rest } = schema;
  return `${JSON.stringify({ $schema, ...described, ...rest }, null, 2)}\n`;
}
