import { parentPort } from 'node:worker_threads';
import { loadCore } from './load-core.ts';
import type { Asked } from '../threads/work.ts';

// One of several threads that read notes: it does what it is asked and sends back what came of it.
const { serve } = loadCore(__dirname, process.argv.slice(2), require);
parentPort?.on('message', (asked: Asked) => {
  void serve(asked).then((answered) => {
    parentPort?.postMessage(answered);
  });
});
