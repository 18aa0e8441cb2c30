/// <reference lib="webworker" />
import { makeBench, type Message } from './work';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
const bench = makeBench((answer) => scope.postMessage(answer, []));
scope.addEventListener('message', ({ data }: MessageEvent<Message>) => bench(data));
