export { session, Session, type Answer } from './session.svelte';
export { draftKey } from './drafts';
export { download, fileName, openFile, saveAside, saveFile, type OpenedFile } from './files';
export type { Drafts } from './storage';
