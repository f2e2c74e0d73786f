/** The shape of every widget: a node by itself, or an object with its `node` and what can be done with it. */
import type { Field, Fine, Length, NameUsed, Value } from "../python/contract.d.ts";

/** What `element` takes between the tags; null and undefined are left out. */
export type Child = Node | string | null | undefined;
export type Children = Child | (Child | Child[])[];

/** What is wrong, in a sentence with its remedy; `field`, `row` and `part` say where. */
export interface Wrong {
  message: string;
  remedy?: string;
  field?: string | null;
  row?: number;
  part?: string;
}

/** Says what is wrong with a field; nothing where all is well. */
export interface FieldError {
  node: HTMLElement;
  show(wrong: Wrong | null | undefined, how?: { quiet?: boolean }): void;
}

/** A field as the core declares it, or as the page does, with as much of it as it needs. */
export type DrawnField = Pick<Field, "key" | "label" | "kind"> &
  Partial<Omit<Field, "fields" | "help">> & {
    help?: string | null;
    fields?: DrawnField[];
    /** What is shown in a blank one, in the place of "blank". */
    blank_shows?: string;
  };

/** How a text was read, with what the project's names in it stand for. */
export type Echo = string | { text: string; names: NameUsed[] };

/** How a field was read, and what is wrong with it. */
export interface Told {
  echo?: Echo;
  error?: Wrong | null;
  errors?: Wrong[];
}

/** What a field is drawn from. */
export interface FieldOptions<Typed> {
  field: DrawnField;
  value: Typed;
  onInput(typed: Typed): void;
  onFocus?(input: HTMLInputElement, part?: DrawnField): void;
}

/** What one of several is chosen from; it needs no kind. */
export type ChoiceOptions = Omit<FieldOptions<string>, "field"> & { field: Omit<DrawnField, "kind"> };

/** What rows are drawn from: each is a form of its own. */
export interface RowsOptions<Typed> extends FieldOptions<Typed> {
  form(options: FormOptions): Form;
}

/** A field of a form; `line` is the row in it. Text of the person's is only changed by `set`. */
export interface FieldWidget<Typed> {
  node: HTMLElement;
  line: HTMLElement;
  value(): Typed;
  set(value: Typed): void;
  show(told: Told): void;
  rename(label: string): void;
  focus(): void;
  /** Opens what it is answered with, where focus alone does not. */
  open?(): void;
}

/** A field that is typed into. */
export interface TextWidget extends FieldWidget<string> {
  input: HTMLInputElement;
}

/** A text, a list of texts, or rows of them. */
export type Typed = string | (string | Record<string, Typed>)[];

export interface FormOptions {
  fields: DrawnField[];
  values: Record<string, Typed>;
  onInput(values: Record<string, Typed>): void;
  onFocus?(input: HTMLInputElement, field: DrawnField, part?: DrawnField): void;
}

/** Fields drawn from their declaration. */
export interface Form {
  node: HTMLElement;
  values(): Record<string, Typed>;
  set(values: Record<string, Typed>): void;
  /** What was changed elsewhere, unless the field is being typed in; whether it stands there now. */
  take(key: string, value: Typed): boolean;
  /** What is `needed` still is not wrong, but must not be hidden. */
  show(told: { echoes?: Record<string, Echo>; errors?: Wrong[]; needed?: Wrong[] }): void;
  /** Unfolds what hides a field, and goes to it. */
  open(key: string): void;
}

/** Keys; `refresh` is called when the field that they write into says something else. */
export interface Keys {
  node: HTMLElement;
  refresh(): void;
}

/** What stands above the keys of the sheet: lines, and what keeps the answer. */
export interface Peek {
  lines: Node[];
  keep?: { label: string; run(): void } | null;
}

/**
 * What can be done about a sentence; it `stays` until it is closed; `news` is of the app's own accord, and one of a `kind`
 * takes the place of the last one of that kind.
 */
export interface Action {
  label?: string;
  run?(): void;
  stays?: boolean;
  news?: boolean;
  kind?: string;
}

/** A value of any kind, with what some kinds have. */
export type Shown = (Value | Fine) &
  Partial<
    Pick<
      Length,
      "brief" | "why" | "way" | "direction" | "words" | "stack" | "other" | "decimals" | "in_decimals" | "dropped_text"
    >
  >;
