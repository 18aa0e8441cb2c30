import type { CDPSession, Page } from 'playwright-core';

/** One interaction as the browser times it: from the input to the frame that shows what it did (Event Timing, W3C). */
export interface Interaction {
	name: string;
	/** ms, in steps of 8. */
	duration: number;
}
interface TimedWindow {
	timed: Interaction[];
}

/** Starts keeping the times of interactions: taps, clicks and keys have an id, other events have none. */
export async function startTiming(page: Page): Promise<void> {
	await page.evaluate(() => {
		const kept = ((window as unknown as TimedWindow).timed = [] as Interaction[]);
		new PerformanceObserver((list) => {
			for (const entry of list.getEntries() as (PerformanceEventTiming & { interactionId?: number })[])
				if (entry.interactionId) kept.push({ name: entry.name, duration: entry.duration });
		}).observe({ type: 'event', durationThreshold: 16, buffered: true } as PerformanceObserverInit);
	});
}
/** The longest interaction since the last call, ms; 0: none took two frames. */
export async function longest(page: Page): Promise<number> {
	// An entry is written after the frame it waits for.
	await page.waitForTimeout(600);
	return page.evaluate(() => {
		const kept = (window as unknown as TimedWindow).timed;
		return Math.max(0, ...kept.splice(0).map(({ duration }) => duration));
	});
}
export async function slowDown(page: Page, times: number): Promise<CDPSession> {
	const session = await page.context().newCDPSession(page);
	await session.send('Emulation.setCPUThrottlingRate', { rate: times });
	return session;
}
