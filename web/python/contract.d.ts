/** What the core is asked and answers. Made of pycore/sawside/contract. */

export type Act = Record<string, any>;

/** The reading that is best measured again. */
export interface Again {
  id: string;
  name: string;
  said: string;
}

/** Degrees, to a hundredth in `text`. */
export interface Angle {
  key: string;
  label: string;
  kind: "angle";
  exact: string | null;
  text: string;
  words: string;
  dropped_text: string;
}

/** An answer that a question may give. */
export interface AnswerDeclared {
  key: string;
  label: string;
  kind: "length" | "angle" | "count" | "weight" | "text" | "lengths";
}

/** An angle: degrees from the x axis, positive towards y. */
export interface Arc {
  kind: "arc";
  center: number[];
  radius: number;
  start: number;
  sweep: number;
  text: string;
}

/** What was asked: which number, by which rule for tapes. */
export interface Asked {
  answer: string;
  tape: string;
}

/** A message that is its name alone. */
export interface Bare {
  do: string;
}

/** How many of a part were cut and spoiled when the plan was made. */
export interface Begun {
  entry: string;
  part: string;
  cut: number;
  spoiled: number;
}

/**
 * A board of a plan in exact inches: to be `bought`, or bought for an earlier
 * plan and `here`; `bad`, or its offcuts `saved` in a list of wood. One that was begun with another
 * blade has its own `kerf`.
 */
export interface BoardOf {
  key: string;
  form: "board" | "sheet" | "stick";
  length: string;
  width?: string;
  thickness?: string;
  material?: string;
  name?: string;
  trim?: string;
  kerf?: string;
  price?: string;
  from?: string;
  flaws?: Record<string, string>[];
  bought?: boolean;
  here?: boolean;
  bad?: boolean;
  saved?: boolean;
  cuts: SawCut[];
  pieces: PieceOf[];
}

/** The same as this version keeps it, the forms in their order. */
export interface BroughtUp {
  document: Document | null;
  forms: FormKept[];
}

/**
 * A case that lines of the project make together: the line that it stands on, its parts, and
 * how it is seen; `note` is what the drawing does not know.
 */
export interface Case {
  entry: string;
  name: string;
  parts: CasePart[];
  views: CaseView[];
  note: string;
}

/** A part in the drawing of a case: its key there, its letter, and where its piece is. */
export interface CasePart {
  key: string;
  letter: string;
  entry: string;
  part: string;
}

/** A case seen from one side, or cut through. */
export interface CaseView {
  key: "front" | "side" | "section" | "plan";
  title: string;
  drawing: Drawing;
}

/** What can hurt or spoil the work: one short line of hazard and act, and all of it. */
export interface Caution {
  short: string;
  full: string;
}

/** A project changed: how to undo it, what was done, and what follows. */
export interface Change {
  document: Document;
  undo: Record<string, any> | null;
  said: string;
  id: string | null;
  follows: Follow[];
  judged: Judged[];
  trial?: Reckoning;
}

/** All the steps of a line of a project, `title` is what its question is called. */
export interface CheckList {
  entry: string;
  name: string;
  title: string;
  steps: StepToDo[];
}

/**
 * How far what these boards cost together can be over the best: dollars where they are
 * `priced`, else boards.
 */
export interface Checked {
  boards: string[];
  over: string;
  priced?: boolean;
}

/** One of several; `value` is what is typed for it, `picture` a small drawing of it. */
export interface Choice {
  value: string;
  label: string;
  help?: string;
  picture?: Drawing;
}

/** A circle; on paper a hole has the `name` of its mark. */
export interface Circle {
  kind: "circle";
  center: number[];
  radius: number;
  role: string;
  name?: string;
}

/** A whole number; or a length by a length, with what is left over. */
export interface Count {
  key: string;
  label: string;
  kind: "count";
  text: string;
  words: string;
  exact?: string;
  remainder?: Length;
}

/**
 * Cuts that belong together: one stop, one board or one part; `waits` says for what. By a
 * cutting plan it is one of its boards, whose key is `board`.
 */
export interface CutGroup {
  setting: Length | null;
  said: string;
  waits: string;
  left: number;
  pieces: PieceAt[];
  board?: string;
}

/** A piece as it was cut; sizes are exact inches ("289/8 in"). */
export interface CutPiece {
  length?: string;
  width?: string;
  thickness?: string;
  short_side?: string;
  ends?: string;
  when?: string;
}

/** The order of the cuts. */
export interface Cuts {
  order: string;
  groups: CutGroup[];
}

/**
 * A plan as it is told. `stale` says what has changed since it was kept, and which pieces it
 * lacks ("" for nothing), `text` is the buy list to be shared.
 */
export interface CuttingPlan {
  said: string;
  buy: ToBuy[];
  cost: string;
  waste: string;
  groups: PlanGroup[];
  left_out: LeftOut[];
  stale: string;
  note: string;
  text: string;
}

/** All questions and settings, declared. */
export interface Described {
  contract: number;
  version: string;
  settings: Field[];
  papers: Paper[];
  labels: Field[];
  jobs: Job[];
  reckoners: Reckoner[];
  search: SearchWords;
  case: Document;
}

/**
 * A dimension line `offset` to the left of where it measures; `field` is the
 * key of the field that asks for it.
 */
export interface Dimension {
  kind: "dimension";
  from: number[];
  to: number[];
  offset: number;
  text: string;
  role: string;
  field?: string;
}

export type Direction = "exact" | "light" | "heavy";

/** A project. */
export interface Document {
  schema: number;
  name: string;
  settings: Record<string, any>;
  next: number;
  entries: (Reading | Line | Note)[];
  tolerance?: Tolerance;
  labels?: LabelGrid;
  plan?: Plan;
  log?: Logged[];
}

/**
 * A step that was done: when by the person's own clock, without a zone ("2026-12-01T07:30"),
 * and what was written down of it. Temperature and humidity have their unit: "68 °F", "45%".
 *
 * The act "tick" takes {id, step}, these but `when`, and the moment as `done_at`; without it that
 * of the act itself. It replaces what was kept of the step; "untick" takes {id, step}.
 */
export interface Done {
  when: string;
  temperature?: string;
  humidity?: string;
  note?: string;
  photo?: string;
}

/** What was kept of a step that is done, and in `said` all of it in a line. */
export interface DoneTold {
  when: string;
  said: string;
  temperature?: string;
  humidity?: string;
  note?: string;
  photo?: string;
}

/** A drawing with words for who can't see it; `box` is left, top, right, bottom. */
export interface Drawing {
  words: string;
  box: number[];
  shapes: Shape[];
}

/** A moment of the person's own clock: `at` as "2026-12-01T07:30", without a zone. */
export interface Due {
  at: string;
  said: string;
}

/** What a reading was before it was corrected. */
export interface Earlier {
  text: string;
  unit: string;
  when?: string;
}

/** What a reading was before, for the eye. */
export interface EarlierTold {
  text: string;
  when: string;
}

/** One end of a piece: how it is cut, at what angle, and what to set at the saw. */
export interface End {
  cut: string;
  angle: string;
  at_the_saw: string[];
}

/** Both ends of a piece as it lies. */
export interface Ends {
  left: End;
  right: End;
}

/**
 * An entry of a project; a reading has what is told of it as well. `verdict` says what to make
 * of a line whose number does not say it.
 */
export interface Entry {
  id: string;
  kind: "reading" | "line" | "note";
  name: string;
  title: string;
  ok: boolean;
  headline: Value | null;
  verdict: string;
  summary: string;
  error: Error | null;
  text: string;
  uses: string[];
  used_by: string[];
  waits: Waits[];
  to_fill: ToFill | null;
  insert: string;
  where?: string;
  tape?: string;
  side?: string;
  when?: string;
  fineness?: string;
  off?: string;
  photo?: string;
  earlier?: EarlierTold[];
  fineness_told?: string;
  off_told?: string;
}

/** One entry with all that belongs to it. */
export interface EntryInFull {
  entry: Entry;
  reckoning: Reckoning | null;
  links: Link[];
}

/**
 * `field` is the key of the field, `at` the place in its text; `row` and `part` are the place
 * inside a list; `unfinished` says that the text only has to go on.
 */
export interface Error {
  kind: "message" | "unknown" | "missing" | "unreadable" | "range" | "impossible" | "conflict" | "newer" | "internal";
  field: string | null;
  at: number | null;
  message: string;
  remedy: string;
  row?: number;
  part?: string;
  unfinished?: true;
}

/** What is asked; one of kind "rows" has the `fields` of each row. */
export interface Field {
  key: string;
  label: string;
  kind: "length" | "angle" | "count" | "number" | "choice" | "material" | "text" | "moment" | "lengths" | "rows";
  help: string;
  default: string | null;
  unit: string | null;
  least: string | null;
  most: string | null;
  default_metric?: string;
  may_be_blank: boolean;
  blank_means: string | null;
  shown_when: ShownWhen[];
  basic: boolean;
  setting?: string;
  choices?: Choice[];
  choices_from?: string;
  choices_prefix?: string;
  row_label?: string;
  most_rows?: number;
  group?: Group;
  twin?: Twin;
  fields?: PlainField[];
}

/** A field that is to be filled in. */
export interface FieldToFill {
  key: string;
  label: string;
}

/** A text that leaves as a file. */
export interface File {
  name: string;
  type: string;
  text: string;
}

export type Fine = Length | Count | Roughly;

/** Whether a clearance covers what its number may be off by. */
export interface Fit {
  field: string;
  label: string;
  answer: string;
  clearance: Length;
  covers: boolean;
  said: string;
}

/** What mends a bad answer, in a word or two, and the key of the field to change for it. */
export interface Fix {
  label: string;
  field: string;
}

/** What a change does to another entry. */
export interface Follow {
  id: string;
  name: string;
  ok: boolean;
  error: Error | null;
  label: string;
  before: Value | null;
  after: Value | null;
  difference: Value | null;
  others: Other[];
}

/** What was typed into the fields of a question. */
export interface FormKept {
  reckoner: string;
  values: Record<string, any>;
}

/** A heading under which several settings belong. */
export interface Group {
  label: string;
  help: string;
}

/** A row of a list, and the field of the row where it has several. */
export interface InRow {
  row: number;
  part: string | null;
}

/** What one reading does to a number. */
export interface Influence {
  id: string;
  name: string;
  text: string;
  by: string;
  off: string;
  moves: Fine | null;
  share: string | null;
}

/** What several questions are for; a question names its `key`. */
export interface Job {
  key: string;
  title: string;
  picture: Picture;
}

/** A verdict that a change gives. */
export interface Judged {
  verdict: string;
  count: number;
  which: number[];
  measure: string | null;
  measures: string[];
  at: Length | null;
  now: Length | null;
  difference: Length | null;
  by: string | null;
  said: string;
  id: string;
  part: string;
  name: string;
}

/** A text at a place; `align` is start, middle or end, `field` as a dimension has it. */
export interface Label {
  kind: "label";
  at: number[];
  text: string;
  align: string;
  role: string;
  field?: string;
}

/** The grid of the person's sheet of stickers, as typed. */
export interface LabelGrid {
  unit: string;
  values: Record<string, any>;
}

/** Labels on sheets of stickers. */
export interface Labeled {
  paper: string;
  sheets: Sheet[];
  said: string;
}

/** Pieces that no wood holds, and what can be done. */
export interface LeftOut {
  name: string;
  pieces: PieceAt[];
  error: Error;
}

/**
 * A length on its mark.
 *
 * `exact` and `mark` are rational inches ("289/8"); `exact` is None, and `rational` False, where
 * no fraction tells it. `dropped` is the mark less the exact length, `brief` the text where no
 * small print stands beside it, `why` and `way` say which way it had to be rounded.
 */
export interface Length {
  key: string;
  label: string;
  kind: "length";
  exact: string | null;
  rational: boolean;
  text: string;
  brief: string;
  mark: string;
  dropped: string;
  dropped_text: string;
  direction: "exact" | "light" | "heavy";
  why: string;
  way: string;
  stack: Stack;
  words: string;
  other: string;
  decimals: string;
  in_decimals: string;
  plain: string;
  exact_plain: string | null;
}

/** Several lengths of one kind, such as marks along a side. */
export interface Lengths {
  key: string;
  label: string;
  kind: "lengths";
  text: string;
  brief: string;
  items: Length[];
}

/**
 * A question with what was typed, by part what became of its pieces, and by the key of a step
 * how it was done.
 */
export interface Line {
  id: string;
  kind: "line";
  name: string;
  unit: string;
  reckoner: string;
  values: Record<string, any>;
  about?: Record<string, Record<string, string>>;
  cut?: Record<string, CutPiece[]>;
  spoiled?: Record<string, CutPiece[]>;
  trials?: Record<string, Trial[]>;
  done?: Record<string, Done>;
}

/** An answer that a name can stand for; `insert` is what is typed for it. */
export interface Link {
  label: string;
  kind: "length" | "angle" | "count" | "weight" | "area" | "volume";
  insert: string;
  text: string;
}

/** One line of the log. */
export interface Logged {
  when: string;
  said: string;
}

/** A project with what a backup has more; `photos` by their keys as data addresses. */
export interface Merged {
  document: Document;
  undo: Record<string, any> | null;
  said: string;
  id: string | null;
  follows: Follow[];
  judged: Judged[];
  trial?: Reckoning;
  rule: string;
  photos: Record<string, string>;
}

/**
 * A name in a text as it is written there, and what it stands for in the document; of a list
 * `rows` are where it is written.
 */
export interface NameUsed {
  name: string;
  stands_for: string;
  rows?: InRow[];
}

/** Words. */
export interface Note {
  id: string;
  kind: "note";
  name: string;
  text: string;
}

/** A number that is none of these: a difference of areas, or of counts that are not whole. */
export interface Number {
  key: string;
  label: string;
  kind: "number";
  text: string;
  words: string;
}

export interface OfDocument {
  do: string;
  document: Document;
}

/** The project whose names a line of the tally uses, and what they meant when it was entered. */
export interface OfProject {
  id: string;
  name: string;
  names?: Record<string, Target>;
}

/** The answer of a question at true size. */
export interface OnPaper {
  title: string;
  summary: string;
  paper: string;
  sheets: Sheet[];
  start: string;
  marks: PaperMark[];
}

/** An answer that is not the first, before and after a change. */
export interface Other {
  key: string;
  label: string;
  before: string;
  after: string;
  difference: string;
}

/** A kind of paper, in millimeters. */
export interface Paper {
  key: string;
  label: string;
  width: number;
  height: number;
}

/** A mark to transfer by hand. */
export interface PaperMark {
  name: string;
  text: string;
  dropped_text: string;
}

/** Pieces to cut that are alike; `about` are sentences on grain, edging and joints. */
export interface Part {
  key: string;
  name: string;
  count: number;
  length: Length;
  width: Length | null;
  thickness: Length | null;
  ends: Ends;
  about?: string[];
  long_side?: Length;
  short_side?: Length;
  drawing: Drawing | null;
}

/**
 * A small picture on a field of 40 by 40 with y down, in path data of SVG: wood is filled, ink
 * drawn over it, chalk over both.
 */
export interface Picture {
  wood?: string;
  ink?: string;
  chalk?: string;
}

/** Pieces of one part: how many there are to cut, how many are cut, of what; `stock` says in words what they are cut of, and how thick that is. */
export interface Piece {
  entry: string;
  part: string;
  name: string;
  count: number;
  cut: number;
  left: number;
  spoiled: number;
  length: Length;
  length_along: string;
  width: Length | null;
  thickness: Length | null;
  ends: Ends;
  about?: string[];
  drawing: Drawing | null;
  from: string;
  material: string;
  stock: string;
  grain: string;
  place: string;
  rough: Rough | null;
  trial: TrialInBrief | null;
  verdicts: Verdict[];
}

/** Where a piece is in the project. */
export interface PieceAt {
  entry: string;
  part: string;
}

/**
 * A piece of a plan: which part of its board it is; `turned` where its length goes across,
 * `done` where it was cut when the plan was made.
 */
export interface PieceOf {
  entry: string;
  part: string;
  of: number;
  turned?: boolean;
  done?: boolean;
}

/**
 * What is asked. `least` and `most` are exact, in inches, degrees or its `unit`; of a moment
 * as it is typed, "2026-11-30T18:00".
 */
export interface PlainField {
  key: string;
  label: string;
  kind: "length" | "angle" | "count" | "number" | "choice" | "material" | "text" | "moment" | "lengths" | "rows";
  help: string;
  default: string | null;
  unit: string | null;
  least: string | null;
  most: string | null;
  default_metric?: string;
  may_be_blank: boolean;
  blank_means: string | null;
  shown_when: ShownWhen[];
  basic: boolean;
  setting?: string;
  choices?: Choice[];
  choices_from?: string;
  choices_prefix?: string;
  row_label?: string;
  most_rows?: number;
  group?: Group;
  twin?: Twin;
}

/** A cutting plan as it is kept. */
export interface Plan {
  kerf: string;
  boards: BoardOf[];
  begun: Begun[];
  checked?: Checked[];
}

/**
 * One board, sheet or stick of a plan; `stock` says in words what it is, `left` are those of
 * its pieces that are not cut, `saved` that its offcuts are in the wood on hand (the act
 * `save_offcuts` {board}, once all of it is cut).
 */
export interface PlanBoard {
  key: string;
  name: string;
  stock: string;
  bought: boolean;
  saved: boolean;
  state: "to cut" | "begun" | "cut" | "bad";
  drawing: Drawing | null;
  marks: PlanMark[];
  cuts: PlanCut[];
  pieces: PieceAt[];
  left: PieceAt[];
  offcuts: string[];
}

/**
 * One cut, in the order in which they are made: `setting` is what the fence or stop is set to,
 * `hand` what is in the hand after it, `pile` what goes back, `pieces` those that come off,
 * `before` the pieces that can't be cut until it is made.
 */
export interface PlanCut {
  key: string;
  way: "trim" | "rip" | "crosscut";
  said: string;
  setting: Length | null;
  hand: string;
  pile: string;
  pieces: PieceAt[];
  before: PieceAt[];
  done: boolean;
}

/**
 * What is cut of one material and thickness: `best` says how good that is, `together` the first
 * cuts of its boards that share a setting, a sentence each.
 */
export interface PlanGroup {
  material: string;
  said: string;
  best: string;
  waste: string;
  together: string[];
  boards: PlanBoard[];
}

/** What a mark on the drawing of a board means, and how many of it come out of the board. */
export interface PlanMark {
  mark: string;
  name: string;
  size: string;
  count: number;
}

/**
 * A plan that was made: `act` keeps it (None where there is nothing to keep). With `more` a
 * greater `effort` may find a better one; `progress` says how far it is, `unplanned` how many
 * pieces are left out.
 */
export interface Planned {
  plan: CuttingPlan;
  act: Record<string, any> | null;
  effort: number;
  more: boolean;
  progress: string;
  unplanned?: number;
}

export type Point = number[];

/**
 * A filled outline; `part` is the part that it is of: its key, and in a drawing of a whole case
 * that of one of its `CasePart`s.
 */
export interface Polygon {
  kind: "polygon";
  points: number[][];
  role: string;
  part?: string;
}

/** An area or a volume, in square or cubic inches. */
export interface Product {
  key: string;
  label: string;
  kind: "area" | "volume";
  exact: string;
  text: string;
  words: string;
  other: string;
  decimals: string;
}

/** Between what and what a number lies. */
export interface Range {
  label: string;
  low: Fine;
  high: Fine;
  by: Fine | null;
}

/**
 * What a text comes to. `finer` is the sixty-fourth nearer to a length than its mark, "" where
 * none is, `kept` how it is told once it is a reading, `stands_for` what a name that stands alone
 * in it is worth, `corrected` tells a reading by a tape that errs, `names` are those of the
 * document that it uses, `note` says which is meant where a name is in both.
 */
export interface Read {
  value: Value;
  echo: string;
  tape: Tape | null;
  finer: string;
  kept: string;
  stands_for: string;
  corrected?: string;
  names?: NameUsed[];
  note?: string;
}

/** What the tape said, or a sum with names. */
export interface Reading {
  id: string;
  kind: "reading";
  name: string;
  unit: string;
  text: string;
  where?: string;
  tape?: string;
  side?: "light" | "heavy";
  when?: string;
  fineness?: string;
  off?: string;
  photo?: string;
  earlier?: Earlier[];
}

/** A question as the page draws it; one that is not `offered` is in no list. */
export interface Reckoner {
  key: string;
  title: string;
  job: string;
  picture: Picture;
  asks: string;
  words: string[];
  fields: Field[];
  solve_one_of: string[];
  answers: AnswerDeclared[];
  source: string;
  makes_parts: boolean;
  offered: boolean;
  example: Record<string, any>;
  example_metric: Record<string, any>;
}

/**
 * The whole answer of a question, the answer that was asked for first.
 *
 * `verdict` says in a few words what to make of it, "" where the number says all; `fixes` are ways
 * to what mends a bad one. `echoes` say how
 * the texts of the fields were read, `names` by the field which names of the document they use.
 * `steps` are there where the question has some to do.
 */
export interface Reckoning {
  reckoner: string;
  answers: Value[];
  verdict: string;
  working: Step[];
  source: string;
  drawing: Drawing | null;
  stick: Stick | null;
  tape: Tape | null;
  fixes: Fix[];
  cautions: Caution[];
  parts: Part[];
  echoes: Record<string, any>;
  summary: string;
  solved: string[];
  names?: Record<string, NameUsed[]>;
  steps?: StepToDo[];
}

/** The answer to a message that is refused: the first error, and the others if any. */
export interface Refused {
  ok: false;
  error: Error;
  more?: Error[];
}

/** A document out of a backup, with its photos as data addresses. */
export interface Restored {
  document: Document;
  photos: Record<string, string>;
  when: string;
  said: string;
}

/** Sizes with what is added before a piece is cut to its finished size. */
export interface Rough {
  length: Length;
  width: Length | null;
  thickness: Length | null;
  as_typed: Record<string, string>;
}

/** What a number that is no length may be off by, or comes to, in text alone. */
export interface Roughly {
  key: string;
  label: string;
  kind: "angle" | "count" | "weight" | "number" | "area" | "volume";
  text: string;
  words: string;
}

/** An answer in words. */
export interface Said {
  key: string;
  label: string;
  kind: "text";
  text: string;
}

/**
 * A cut of a plan: through which of the parts that there are by then (0 is the board, cut n
 * makes 2n + 1, which comes off, and 2n + 2), and how much comes off. A `trim` is waste.
 */
export interface SawCut {
  way: "rip" | "crosscut";
  part: number;
  at: string;
  trim?: boolean;
}

/**
 * What questions are found by beside their own words: each of `same` is phrases of one
 * meaning, `small` words need not be there, those of `elsewhere` are no slips of others.
 */
export interface SearchWords {
  same: string[][];
  small: string[];
  elsewhere: string[];
}

/** A row of holes, by its distance from its edge. */
export interface Setback {
  name: string;
  mm: number;
  text: string;
}

export type Settings = Record<string, any>;

export type Shape = Polygon | StraightLine | Dimension | Label | Arc | Circle;

/** A sheet of paper in millimeters; of a stick, from where to where it shows it. */
export interface Sheet {
  width: number;
  height: number;
  words: string;
  shapes: Shape[];
  number: number;
  of: number;
  from?: number;
  to?: number;
}

/** The field is asked only while another has one of these values, and all such hold. */
export interface ShownWhen {
  field: string;
  is: string[];
}

/** A length in its parts, to be set as a stacked fraction. */
export interface Stack {
  sign: string;
  feet: string | null;
  whole: string | null;
  numerator: string | null;
  denominator: string | null;
  unit: string;
}

/** One line of the working. */
export interface Step {
  text: string;
}

/**
 * A step of a project that is still to do: `entry` and `name` are its line, `step` its key.
 * `line` says it in one line: "Second coat, from Tue, Dec 1, 7:30 AM".
 */
export interface StepAhead {
  entry: string;
  name: string;
  step: string;
  said: string;
  line: string;
  due: Due | null;
  state: "next" | "waits" | "due";
}

/**
 * What can hurt at this step: one short line, and all of it the first time that it stands in a
 * list; after that "full" is the short line again.
 */
export interface StepCaution {
  short: string;
  full: string;
}

/**
 * One step of a list. `key` stays whatever is typed; `about` goes with it, "" for nothing.
 *
 * `due` is when to do it, in hours when the person is there; `earliest` is the first moment at
 * which it may be done. Of those not done, "due" are those whose time has come by the `now` that
 * was sent and that wait for nothing, "passed" those that were not ticked while one that
 * comes after them is done, "next" is the first of the others, and the rest "waits".
 */
export interface StepToDo {
  key: string;
  said: string;
  about: string;
  caution: StepCaution | null;
  due: Due | null;
  earliest: Due | null;
  state: "done" | "passed" | "next" | "waits" | "due";
  done: DoneTold | null;
}

/** A story stick, or a template where `hole_mm` is the diameter of its holes. */
export interface Stick {
  name: string;
  start: string;
  note: string;
  length_mm: number;
  text: string;
  hole_mm: number | null;
  setbacks: Setback[];
  marks: StickMark[];
}

/** A mark of a story stick at its exact place; its text says the graduation. */
export interface StickMark {
  name: string;
  at_mm: number;
  text: string;
  dropped_text: string;
}

/** How much of one material and section the pieces take together. */
export interface Stock {
  material: string;
  width: Length | null;
  thickness: Length | null;
  count: number;
  length: Length;
  rough: Length;
  spoiled: number;
  spoiled_length: Length;
}

/** A line between two points; on paper it may have the `name` of its mark. */
export interface StraightLine {
  kind: "line";
  from: number[];
  to: number[];
  role: string;
  name?: string;
}

/** An inch or a centimeter drawn large, to touch a mark on. */
export interface Strip {
  unit: string;
  words: string;
  separator: string;
  marks: StripMark[];
}

/** A mark of the strip: touching it writes `text`; the last one is the next number's. */
export interface StripMark {
  at: number;
  size: number;
  label: string;
  text: string | null;
  words: string;
}

/** A sum of the pad as a project can keep it; `said` where that is only its number. */
export interface SumKept {
  text: string;
  unit: string;
  value: Value;
  said: string;
}

/** How sure a number is. */
export interface Sure {
  value: Value;
  label: string;
  steps: boolean;
  worst: Range | null;
  likely: Range | null;
  readings: Influence[];
  measure_again: Again | null;
  said: string;
  fit: Fit | null;
  asked: Asked;
  fields: Field[];
}

export interface Table {
  name: string;
  type: string;
  text: string;
  what: string;
}

/** The tally, how to undo what was done, and its lines worked out. */
export interface Tallied {
  tally: Tally;
  undo: Record<string, any> | null;
  lines: TallyLineTold[];
}

/** The lines of the pad. */
export interface Tally {
  schema: number;
  next: number;
  lines: TallyLine[];
}

/** A line of the pad as it was typed. */
export interface TallyLine {
  id: string;
  name: string;
  text: string;
  unit: string;
  project?: OfProject;
}

/** A line of the pad worked out. */
export interface TallyLineTold {
  id: string;
  name: string;
  text: string;
  ok: boolean;
  value: Value | null;
  error: Error | null;
  note: string;
}

/** A stretch of tape: where the mark is, and where the exact length. */
export interface Tape {
  unit: string;
  from: number;
  to: number;
  ticks: Tick[];
  at: number;
  true_at: number;
  words: string;
}

/** What a name means: an entry, and which of its answers. */
export interface Target {
  entry: string;
  answer: string;
}

/** A graduation of the tape: how high it is from 0 to 1, and its number if it has one. */
export interface Tick {
  at: number;
  size: number;
  label: string | null;
}

export interface ToBackUp {
  do: string;
  document: Document;
  when?: string | null;
  photos?: Record<string, string> | null;
}

/** What an earlier version kept. */
export interface ToBringUp {
  do: string;
  document?: Document | null;
  forms?: FormKept[] | null;
}

/** So many of one size to buy; the texts of money are "" where there is no price. */
export interface ToBuy {
  count: number;
  said: string;
  each: string;
  cost: string;
}

/**
 * The steps of one line, or of all; `when` is the present moment, `project` is what the page
 * knows the document by.
 */
export interface ToCalendar {
  do: string;
  document: Document;
  when: string;
  id?: string | null;
  project?: string | null;
}

/** Without a document a project is begun. */
export interface ToChange {
  do: string;
  document?: Document | null;
  act: Record<string, any>;
  follows?: boolean | null;
}

export interface ToDoubt {
  do: string;
  document: Document;
  id: string;
  answer?: string | null;
  tape?: string | null;
}

export interface ToDraw {
  do: string;
  settings?: Record<string, any> | null;
}

/**
 * What of an entry is to be filled in: "fill" has no answer for want of `fields`, "check" has
 * one that stands on what is usual in them, "waits" uses the entries `waits_for` without one.
 */
export interface ToFill {
  state: "fill" | "check" | "waits";
  fields: FieldToFill[];
  waits_for: string[];
}

/** What of the tally is to be kept: a line by its `id`, or a `text` being typed. */
export interface ToKeep {
  do: string;
  settings?: Record<string, any> | null;
  tally?: Tally | null;
  id?: string | null;
  text?: string | null;
  document?: Document | null;
  project?: string | null;
}

export interface ToLabel {
  do: string;
  document: Document;
  paper: string;
  values?: Record<string, any> | null;
  unit?: string | null;
}

export interface ToMerge {
  do: string;
  document: Document;
  text: string;
  when?: string | null;
}

export interface ToPlan {
  do: string;
  document: Document;
  effort?: number | null;
}

export interface ToPrint {
  do: string;
  settings?: Record<string, any> | null;
  reckoner: string;
  values?: Record<string, any> | null;
  unit?: string | null;
  document?: Document | null;
  id?: string | null;
  paper: string;
}

/** `names` are VALUEs by name; with a document its names may stand in the text. */
export interface ToRead {
  do: string;
  settings?: Record<string, any> | null;
  text: string;
  unit?: string | null;
  document?: Document | null;
  id?: string | null;
  names?: Record<string, any> | null;
}

/** By `now` a step of the question is due; it is a moment as in `ToTellNow`. */
export interface ToReckon {
  do: string;
  settings?: Record<string, any> | null;
  reckoner: string;
  values?: Record<string, any> | null;
  unit?: string | null;
  document?: Document | null;
  id?: string | null;
  now?: string | null;
}

export interface ToRestore {
  do: string;
  text: string;
}

export interface ToTabulate {
  do: string;
  document: Document;
  what: "parts" | "readings" | "cuts" | "stock" | "buy";
}

export interface ToTakeTable {
  do: string;
  document: Document;
  what: "parts" | "readings" | "cuts" | "stock" | "buy";
  text: string;
  when?: string | null;
}

/** `project` is what the page knows the document by. */
export interface ToTally {
  do: string;
  settings?: Record<string, any> | null;
  tally?: Tally | null;
  act?: Record<string, any> | null;
  document?: Document | null;
  project?: string | null;
}

export interface ToTell {
  do: string;
  document: Document;
  id: string;
}

/** `now` is a moment by the person's own clock, without a zone: "2026-12-01T07:30". */
export interface ToTellNow {
  do: string;
  document: Document;
  id: string;
  now?: string | null;
}

export interface ToView {
  do: string;
  document: Document;
  order?: string | null;
  drawings?: boolean | null;
  now?: string | null;
}

export interface ToWorkOut {
  do: string;
  settings?: Record<string, any> | null;
  reckoner: string;
  values?: Record<string, any> | null;
  unit?: string | null;
  document?: Document | null;
  id?: string | null;
}

/** How far a piece may be off, as typed. */
export interface Tolerance {
  text: string;
  unit: string;
}

/** A set-up that was tried. */
export interface Trial {
  aimed: string;
  measured: string;
  unit: string;
  cut: "stop" | "mark";
  when?: string;
}

/** The last set-up that was tried for a part. */
export interface TrialInBrief {
  difference: string;
  direction: string;
  remedy: string;
  when: string;
  tried: number;
}

/**
 * The field that is as a rule filled in like this one: both are asked for once, under `label`,
 * until they are made different. `apart` and `together` say so.
 */
export interface Twin {
  key: string;
  label: string;
  apart: string;
  together: string;
}

export type Typed = Record<string, any>;

export type Value = Length | Angle | Count | Weight | Said | Lengths | Product | Number;

/**
 * Pieces that were cut and are alike in what is to be said of them. `by` is how much the first
 * measure differs, as `said` has it: on finer marks than `difference`.
 */
export interface Verdict {
  verdict: string;
  count: number;
  which: number[];
  measure: string | null;
  measures: string[];
  at: Length | null;
  now: Length | null;
  difference: Length | null;
  by: string | null;
  said: string;
}

/**
 * A project with everything worked out; `steps` are those of its check lists that are not done,
 * in their order, `plan` is the cutting plan that is kept, if any.
 */
export interface View {
  name: string;
  schema: number;
  entries: Entry[];
  pieces: Piece[];
  cuts: Cuts;
  set_ups: CutGroup[];
  cases: Case[];
  plan: CuttingPlan | null;
  tally: Stock[];
  check_lists: CheckList[];
  steps: StepAhead[];
  tolerance: Tolerance | null;
  tolerance_told: string;
  log: Logged[];
}

/** A name without a value that an entry waits for; `id` None where there is no such entry. */
export interface Waits {
  id: string | null;
  name: string;
}

/** A weight in pounds and kilograms, or in kilograms alone. */
export interface Weight {
  key: string;
  label: string;
  kind: "weight";
  text: string;
  words: string;
}

export interface Asks {
  describe: Bare;
  strip: ToDraw;
  read: ToRead;
  reckon: ToReckon;
  paper: ToPrint;
  tally: ToTally;
  tally_sum: ToKeep;
  labels: ToLabel;
  change: ToChange;
  view: ToView;
  today: ToBringUp;
  entry: ToTellNow;
  sure: ToDoubt;
  plan: ToPlan;
  csv: ToTabulate;
  take_csv: ToTakeTable;
  calendar: ToCalendar;
  backup: ToBackUp;
  restore: ToRestore;
  merge: ToMerge;
}

export interface Answers {
  describe: Described;
  strip: Strip;
  read: Read;
  reckon: Reckoning;
  paper: OnPaper;
  tally: Tallied;
  tally_sum: SumKept;
  labels: Labeled;
  change: Change;
  view: View;
  today: BroughtUp;
  entry: EntryInFull;
  sure: Sure;
  plan: Planned;
  csv: Table;
  take_csv: Change;
  calendar: File;
  backup: File;
  restore: Restored;
  merge: Merged;
}

export type Name = keyof Asks;

/** A message, by its name. */
export type Message<N extends Name = Name> = Asks[N] & { do: N };

/** An answer: what was asked for, or why it is refused. */
export type Answered<Answer> = (Answer & { ok: true }) | Refused;

/** Asks the core; the promise is never rejected. */
export type Ask = <N extends Name>(message: Message<N>) => Promise<Answered<Answers[N]>>;
