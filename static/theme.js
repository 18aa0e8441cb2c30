// Before first paint: the theme this person chose, if any. Kept apart so that the content policy needs no inline script.
try {
	const theme = localStorage.getItem('duskwright/theme');
	if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
} catch (error) {
	// Storage may be shut off in this browser; the system's own theme then holds.
	console.info('The chosen theme could not be read:', error);
}
