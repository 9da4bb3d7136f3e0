/** What the map can be asked to do from outside: by a command, a button or a key. The map registers itself when it is mounted. */

export interface CanvasControls {
  /** The whole game in view. */
  fit(): void;
  zoomIn(): void;
  zoomOut(): void;
}

let controls: CanvasControls | undefined;

/** Returns what undoes it, for when the map is taken down. */
export function registerCanvas(canvas: CanvasControls): () => void {
  controls = canvas;
  return () => {
    if (controls === canvas) controls = undefined;
  };
}

/** Undefined while no map is mounted. */
export function canvas(): CanvasControls | undefined {
  return controls;
}
