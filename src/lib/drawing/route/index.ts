export { default as RouteDrawing } from './RouteDrawing.svelte';
export { describeRoute, drawRoute, type RouteOptions } from './draw-route';
export { routeFrame } from './frame';
