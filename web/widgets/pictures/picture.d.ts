/** A drawing of the core on its way to the screen; all is in the units of its viewBox. */

export type Point = [x: number, y: number];
export type Stroke = [Point, Point];

/** How far a text reaches from its middle, across and up. */
export type Half = [across: number, up: number];

/** A text as this browser's font writes it: its lines, its class (`look`), that of its group, the size of its letters. */
export interface Measured {
  words: string;
  look: string;
  group: string | null;
  lines: string[];
  size: number;
  half: Half;
}

/** A text of a shape: with its middle, how it is aligned, and the line that it is of. */
export interface Written extends Measured {
  at: Point;
  align: "start" | "middle" | "end";
  along?: Stroke;
}

/** Where a text is put; `gap` is how much of its line it takes, around its middle. */
export interface Place {
  x: number;
  y: number;
  gap?: number;
}

export type Box = Place & { half: Half };

/** A text that has its place, with a leader back to where it belongs; `isSqueezed` where there is no room for it. */
export type Placed<Text extends Written = Written> = Text & Place & { leader?: Stroke; isSqueezed?: boolean };

/** A shape of the core scaled to the screen; `draw` gives its nodes once its text has found room. */
export interface OnScreen {
  strokes: Stroke[];
  text?: Written | null;
  draw(place?: Place): Node[];
  group?: string;
  area?: Area;
}

/** An outline that a part has on the screen; what is behind an open one is in sight. */
export interface Area {
  part: string;
  corners: Point[];
  isOpen: boolean;
}

/** What is done with a part that is touched: what each is called ("" for one that isn't told). */
export interface Parts {
  labelOf(key: string): string;
  open(key: string): void;
}

/** Where a point of the drawing is on the screen. */
export type ToScreen = (point: number[]) => Point;

/** The fields that the dimensions of a drawing open: what each is called ("" for one that isn't asked for now). */
export interface Fields {
  labelOf(key: string): string;
  open(key: string): void;
}
