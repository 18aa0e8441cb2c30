import adapter from '@sveltejs/adapter-static';

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ strict: true }),
		prerender: { handleUnseenRoutes: 'fail', handleHttpError: 'fail' },
		serviceWorker: { register: true },
		typescript: {
			// tests/ and src/tools are type-checked with the rest
			config: (config) => ({ ...config, include: [...config.include, '../src/tools/**/*'] })
		},
		// Nothing may be fetched from, or sent to, anywhere but the site itself.
		csp: {
			mode: 'hash',
			directives: {
				'default-src': ['none'],
				'script-src': ['self'],
				'style-src': ['self'],
				// Kit's route announcer sets a style attribute.
				'style-src-attr': ['unsafe-inline'],
				'img-src': ['self', 'data:', 'blob:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'manifest-src': ['self'],
				'worker-src': ['self'],
				'base-uri': ['none'],
				'form-action': ['none']
			}
		}
	}
};
