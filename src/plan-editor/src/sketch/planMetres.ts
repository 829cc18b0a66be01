import Projection from 'ol/proj/Projection.js';

/** The plan's own metres: flat, x to the right, y up, nothing to do with the globe. */
export const planMetres = new Projection({ code: 'plan', units: 'm', extent: [-1e4, -1e4, 1e4, 1e4] });
