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
