/*
 * A paper as plain data. Whoever builds a tree decides every word and formats every number, with its unit; whoever
 * renders it only sets type. So a saved tree can be read and compared, and a paper looks the same wherever it is made.
 */

/** One paper, ready to be set as PDF or written as CSV. */
export interface PageTree {
  /** The paper's own name, as in the design: 'as-found record'. */
  readonly paper: string;
  readonly title: string;
  /** BCP 47 tag of the language the words are in. */
  readonly language: string;
  readonly orientation: 'portrait' | 'landscape';
  /** 'large' for sheets that lie at the bench and are read at arm's length. */
  readonly textSize?: 'large';
  readonly running: RunningLines;
  readonly blocks: readonly Block[];
  readonly machineTable: MachineTable;
}

/** What stands at the head and foot of every page. */
export interface RunningLines {
  readonly job: string;
  readonly date: string;
  /** 'sealed …, digest …' or 'not sealed'. */
  readonly seal: string;
  /** Where the figures of this paper come from, in one line. */
  readonly origin: string;
  /** 'page {page} of {pages}', for whoever counts the pages to put the two numbers in. */
  readonly pageOf: string;
  /** The way back to the job, beside the title on the first page alone; without an address there is none. */
  readonly code?: AddressCode | undefined;
}

/** An address as a code to be read by a camera, and in letters. */
export interface AddressCode {
  readonly address: string;
  readonly text: string;
}

export type Block =
  | Heading
  | Paragraph
  | FactList
  | BulletList
  | Box
  | Table
  | Chart
  | Photos
  | Drawing
  | SignatureLines
  | { readonly is: 'page break' };

/** Level 1 is the paper's title, level 2 a chapter, level 3 a part of one. */
export interface Heading {
  readonly is: 'heading';
  readonly level: 1 | 2 | 3;
  readonly text: string;
}

export interface Paragraph {
  readonly is: 'paragraph';
  readonly text: string;
  readonly tone?: 'lead' | 'quiet';
}

/** Names and values, two columns. */
export interface FactList {
  readonly is: 'facts';
  readonly rows: readonly { readonly name: string; readonly value: string }[];
}

export interface BulletList {
  readonly is: 'list';
  /** How an item begins: a dot, or an empty square to be ticked on paper. */
  readonly marks: 'dots' | 'boxes';
  readonly items: readonly string[];
}

/** A short text set apart: a caution where work can hurt, the state of the seal, a note. */
export interface Box {
  readonly is: 'box';
  readonly tone: 'caution' | 'seal' | 'note';
  readonly title: string;
  readonly texts: readonly string[];
}

/** Lines to be written on by hand, side by side, each with its name beneath. */
export interface SignatureLines {
  readonly is: 'signature lines';
  readonly names: readonly string[];
}

/** A drawing at true scale: millimetres of paper, from its upper left corner. It is never made smaller to fit. */
export interface Drawing {
  readonly is: 'drawing';
  /** What it shows, in a sentence, for whoever cannot see it. */
  readonly words: string;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly lines: readonly DrawnLine[];
  readonly texts: readonly DrawnText[];
}

export interface DrawnLine {
  readonly from_mm: readonly [x: number, y: number];
  readonly to_mm: readonly [x: number, y: number];
  readonly weight_mm: number;
  readonly tone?: 'quiet';
  readonly dashed?: true;
}

export interface DrawnText {
  readonly at_mm: readonly [x: number, y: number];
  readonly text: string;
  readonly size_mm: number;
  readonly anchor?: 'middle' | 'end';
  readonly tone?: 'quiet';
}

export interface Table {
  readonly is: 'table';
  /** Repeated with the headings on every page the table runs over. */
  readonly title?: string;
  /** Share of the page's width; the whole of it when not given. */
  readonly width?: number;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly TableRow[];
  /** Under the title, small, and repeated with it: marks explained, pages of calculated figures. */
  readonly remarks?: readonly string[];
}

export interface TableColumn {
  /** Columns next to each other with the same group share one heading above their own. */
  readonly group?: string;
  readonly heading: string;
  readonly align: 'left' | 'right' | 'centre';
  /** Share of the table's width, relative to the other columns. */
  readonly share: number;
  /** Quiet columns stand back: the second unit, the spread. */
  readonly tone?: 'quiet';
  /** The page of `core` that calculates this column's figures: 'core/strings/string-tension'. */
  readonly page?: string;
}

/** A row of cells, in full ink where it is the sum of those above; or a band across the table that names the rows below it. */
export type TableRow = { readonly cells: readonly Cell[]; readonly tone?: 'sum' } | { readonly band: string };

/**
 * A formatted figure or word; what was found instead of a figure; or a blank to be filled in, with its reason.
 * The last two may reach across several columns; the cells they cover are left out of the row.
 */
export type Cell =
  | string
  | { readonly absent: string; readonly across?: number }
  | { readonly blank: string; readonly across?: number };

/** A chart against key number, black on white, told apart by shape so that it survives a photocopier. */
export interface Chart {
  readonly is: 'chart';
  readonly title: string;
  /** What the chart shows, in a sentence, for whoever cannot see it. */
  readonly words: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly bands: readonly { readonly from: number; readonly to: number; readonly name: string }[];
  readonly series: readonly ChartSeries[];
}

export interface Axis {
  readonly name: string;
  readonly scale: 'linear' | 'log';
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly text: string }[];
}

export interface ChartSeries {
  readonly name: string;
  readonly mark: 'dot' | 'ring' | 'square' | 'cross' | 'bar';
  /** Width of a bar along x; a bar stands on the foot of the chart. */
  readonly barWidth?: number;
  /** True where a thin line goes from point to point: one thing at several times. */
  readonly isJoined?: true;
  readonly points: readonly (readonly [x: number, y: number])[];
}

/** Photos, several to a page. The tree names each by its digest; whoever renders hands in the bytes. */
export interface Photos {
  readonly is: 'photos';
  readonly photos: readonly PrintedPhoto[];
  /** What stands in place of a photo whose bytes are not handed in. */
  readonly ifMissing: string;
  /** What stands in place of bytes that are no picture. */
  readonly ifUnreadable: string;
}

export interface PrintedPhoto {
  /** SHA-256 of the picture's bytes, hexadecimal. */
  readonly digest: string;
  /** What it shows; under it where, when and by which name it is found again. */
  readonly title: string;
  readonly lines: readonly string[];
  readonly marks: readonly PrintedMark[];
}

/** A mark that lies on top of a photo, its words ready; positions are shares of the picture from its top left corner. */
export type PrintedMark =
  | { readonly mark: 'arrow'; readonly from: PhotoPoint; readonly to: PhotoPoint; readonly words: string }
  | { readonly mark: 'label'; readonly at: PhotoPoint; readonly words: string }
  /** A length; of a `scale bar` it was measured on the piano. */
  | {
      readonly mark: 'scale bar' | 'distance';
      readonly from: PhotoPoint;
      readonly to: PhotoPoint;
      readonly words: string;
    };

export interface PhotoPoint {
  readonly x: number;
  readonly y: number;
}

/** A table for a machine: plain names with the unit in them, plain numbers with a decimal point. */
export interface MachineTable {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly MachineCell[])[];
}

/** A formatted number or word; nothing is an empty cell, and another column says why. */
export type MachineCell = string | undefined;

export type PaperSize = 'A4' | 'Letter';
