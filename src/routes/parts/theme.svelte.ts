import { browser } from '$app/environment';

const key = 'duskwright/theme';
export type Theme = 'light' | 'dark';

/** Day or night: the system's choice until the person makes their own, which is kept in this browser. */
class ThemeChoice {
	/** What is shown now. */
	shown = $state<Theme>('light');

	/** Reads what is shown; follows the system while there is no choice. Call once, in the browser. */
	start(): () => void {
		const query = matchMedia('(prefers-color-scheme: dark)');
		const read = () => {
			const chosen = document.documentElement.dataset['theme'];
			this.shown = chosen === 'light' || chosen === 'dark' ? chosen : query.matches ? 'dark' : 'light';
		};
		read();
		query.addEventListener('change', read);
		return () => query.removeEventListener('change', read);
	}

	/** Turns the page over. Returns false when the browser would not keep the choice; the page still changes. */
	turn(): boolean {
		this.shown = this.shown === 'dark' ? 'light' : 'dark';
		if (!browser) return false;
		document.documentElement.dataset['theme'] = this.shown;
		try {
			localStorage.setItem(key, this.shown);
			return true;
		} catch {
			return false;
		}
	}
}
export const theme = new ThemeChoice();
