/** The canvas library with one bare node and nothing else: what a drag costs on this machine before anything is drawn. */
import { createRoot } from 'react-dom/client';
import { ReactFlow } from 'reactflow';
import 'reactflow/dist/style.css';

const NODES = [{ id: 'one', position: { x: 200, y: 200 }, data: { label: 'one' } }];

const mount = document.getElementById('page');
if (mount) createRoot(mount).render(<ReactFlow defaultNodes={NODES} />);
