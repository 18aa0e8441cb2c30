import { error } from '@sveltejs/kit';
import { questions } from '$lib/flow';
import type { EntryGenerator, PageLoad } from './$types';

export const entries: EntryGenerator = () => questions.map(({ chapter, id }) => ({ chapter, question: id }));

export const load: PageLoad = ({ params }) => {
	const question = questions.find(({ chapter, id }) => chapter === params.chapter && id === params.question);
	if (!question) error(404, 'There is no such question.');
	return { question };
};
