/// <reference lib="webworker" />
/** Paints the yard after dark and works out its light maps, off the page's own thread. */
import { developer, luminancePicture, paintBands, type Developer } from '$lib/night';
import type { LuminancePicture } from '$lib/night/types';
import { fieldOf, groundOf, wallsOf } from './grids';
import type { Answer, Request, Sheet } from './messages';

const scope = globalThis as unknown as DedicatedWorkerGlobalScope;
type Paint = Request & { kind: 'paint' };

/** What is developed when another hour is asked for. */
let develop: Developer | null = null;
let hour = 0;
/** The last order to paint: an earlier one is given up. */
let order = 0;

const answer = (message: Answer, ...given: Transferable[]): void => scope.postMessage(message, given);

function show(id: number): void {
	if (!develop) return;
	const { width, height, pixels } = develop(hour);
	const sheet: Sheet = { width, height, pixels: pixels as Uint8ClampedArray<ArrayBuffer> };
	answer({ id, kind: 'developed', sheet }, sheet.pixels.buffer);
}
function hang(id: number, picture: LuminancePicture, fine: boolean): void {
	develop = developer(picture);
	show(id);
	const { surface, surfaces, lux, view } = picture;
	// Copied: the picture itself stays here to be developed again.
	answer({ id, kind: 'painted', seen: { surface, surfaces, lux, view }, fine });
}

/** The coarse picture has a pixel for so many of the fine one, each way. */
const coarse = 4;
/** Between two looks at what else is asked for, milliseconds. */
const breath = 60;
const breathe = () => new Promise<void>((resolve) => setTimeout(resolve, 0));

async function paint({ id, plan, view, box, daylight }: Paint): Promise<void> {
	const own = ++order;
	hour = daylight;
	const small = { ...view, width: Math.round(view.width / coarse), height: Math.round(view.height / coarse) };
	hang(id, luminancePicture(plan, small, undefined, { box }), false);
	const bands = paintBands(plan, view, { box });
	let last = performance.now();
	for (let step = bands.next(); ; step = bands.next()) {
		if (step.done) return hang(id, step.value, true);
		if (performance.now() - last < breath) continue;
		answer({ id, kind: 'progress', share: step.value.to / view.height });
		await breathe();
		if (own !== order) return;
		last = performance.now();
	}
}
async function handle(request: Request): Promise<void> {
	const { id } = request;
	switch (request.kind) {
		case 'ground':
			return answer({ id, kind: 'ground', map: groundOf(fieldOf(request.plan), request.box) });
		case 'walls':
			return answer({ id, kind: 'walls', walls: wallsOf(fieldOf(request.plan), request.plan) });
		case 'paint':
			return paint(request);
		case 'develop':
			hour = request.daylight;
			return show(id);
	}
}
scope.addEventListener('message', ({ data }: MessageEvent<Request>) => {
	handle(data).catch((error: unknown) =>
		answer({ id: data.id, kind: 'failed', words: error instanceof Error ? error.message : String(error) })
	);
});
