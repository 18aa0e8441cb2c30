export interface Row {
	name: string;
	value: number;
	unit: string;
}

/** Median milliseconds of `times` calls, after half as many (at least three) that are not counted, so that the engine has compiled what it will. */
export function medianMs(call: () => unknown, times: number): number {
	for (let index = 0; index < Math.max(3, times / 2); index += 1) call();
	const spent: number[] = [];
	for (let index = 0; index < times; index += 1) {
		const from = performance.now();
		call();
		spent.push(performance.now() - from);
	}
	spent.sort((a, b) => a - b);
	return spent[Math.floor(times / 2)] ?? 0;
}

/** Slope of log time against log size, least squares: the power of the size that time grows with. */
export function slope(points: readonly { size: number; ms: number }[]): number {
	const list = points.map(({ size, ms }) => ({ x: Math.log(size), y: Math.log(ms) }));
	const mean = (of: (p: { x: number; y: number }) => number) => list.reduce((sum, p) => sum + of(p), 0) / list.length;
	const [x, y] = [mean((p) => p.x), mean((p) => p.y)];
	return mean((p) => (p.x - x) * (p.y - y)) / mean((p) => (p.x - x) ** 2);
}
