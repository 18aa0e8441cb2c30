/** Where a figure can be changed on trial: told by the page that shows workings, as working/ knows no pages. */
import { getContext, setContext } from 'svelte';

/** The address for a figure by its label and as it is shown, `11.64 V`; `at`: id of the light or the run it is of, where that is known. */
export type ChangeOne = (label: string, text: string, at: string | undefined) => string;
const key = 'dw-change-one';

export const setChangeOne = (href: ChangeOne): ChangeOne => setContext(key, href);
export const changeOne = (): ChangeOne | undefined => getContext<ChangeOne | undefined>(key);
