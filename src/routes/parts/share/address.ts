import { resolve } from '$app/paths';

/** The page of this site that opens a link, in full. In a browser only. */
export const openAddress = (): string => new URL(resolve('/open/'), location.href).href;
/** Whether no other device can open an address of this site, since it names the device itself. */
export const onlyHere = (): boolean => /^(localhost|127\.\d+\.\d+\.\d+|\[::1\])$/.test(location.hostname);
