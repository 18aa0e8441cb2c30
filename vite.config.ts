import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	build: {
		rolldownOptions: {
			output: {
				codeSplitting: {
					// What every page loads first stays in one piece, which packs better, whichever page uses a part of it alone.
					groups: [
						{
							name: 'yard',
							test: /node_modules\/zod\/|\/src\/lib\/(domain\/yard\/schema|ui\/(Button|Choice|TextField|FieldNotes|Mark|CountField|Explained|UnsureSwitch|types|words)\b|state\/(session\.svelte|storage|saver|history|drafts|check)\b|flow\/(steps|status)\b|working\/change-one)|\/src\/routes\/parts\/(ways|links|in-address)\b|@sveltejs\/kit\/src\//
						}
					]
				}
			}
		}
	},
	test: {
		projects: [
			{
				extends: true,
				test: {
					name: 'unit',
					environment: 'node',
					include: ['src/**/*.test.ts', 'tests/*.test.ts'],
					// One core is otherwise left idle, which on two is half.
					maxWorkers: '100%',
					// The full size of what runs long (LONG=1) takes minutes.
					testTimeout: process.env.LONG ? 1_800_000 : 60_000
				}
			},
			{
				extends: true,
				test: {
					name: 'browser',
					environment: 'node',
					include: ['tests/browser/**/*.test.ts'],
					globalSetup: ['tests/browser/site.setup.ts'],
					maxWorkers: 2,
					testTimeout: 120_000,
					hookTimeout: 120_000
				}
			},
			{
				extends: true,
				test: {
					name: 'speed',
					environment: 'node',
					include: ['tests/speed/**/*.test.ts'],
					globalSetup: ['tests/browser/site.setup.ts'],
					// Alone on the machine: times are taken.
					maxWorkers: 1,
					fileParallelism: false,
					testTimeout: 180_000,
					hookTimeout: 120_000
				}
			}
		]
	}
});
