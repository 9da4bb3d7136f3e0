/** Lays out the graph that comes in and writes it out again with positions, as JSON. A process of its own, so that it can be ended. */
import { text } from 'node:stream/consumers';
import ELK from 'elkjs/lib/elk.bundled.js';

const graph = JSON.parse(await text(process.stdin));
process.stdout.write(JSON.stringify(await new ELK().layout(graph)));
