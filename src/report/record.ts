import type { ExecutedNotebook } from "../notebook/executed.js";
import { allRoles, isRoleList, type Role } from "../notebook/roles.js";
import type { CheckResult } from "../published/row.js";
import { bibliography } from "../sources/bibliography.js";
import { isEvidenceKind, isStatus } from "./checklist.js";
import { ReportError } from "./errors.js";
import { type HandoutContent, handoutOf, isHandoutContent } from "./handout-content.js";
import { PageIds } from "./markdown.js";
import { outlineOf } from "./outline.js";
import { isPageSection, type PageSection, pageSections } from "./pagesections.js";
import { isThumbnail, type Thumbnail, thumbnailOf } from "./thumbnail.js";

/** What a built report leaves behind for the pages that lead to it. */
export interface ReportRecord {
  readonly name: string;
  /** Place on the index, from 1; those without one come last. */
  readonly place?: number;
  /** Plain text. */
  readonly question: string;
  /** Markdown. */
  readonly answer: string;
  readonly thumbnail?: Thumbnail;
  /** Readers it is for. */
  readonly roles: readonly Role[];
  /** What a search looks through. */
  readonly sections: readonly PageSection[];
  readonly checks: readonly CheckResult[];
  readonly handout: HandoutContent;
}

/** Address of a report's page, from the pages beside it. */
export function pageAddress(name: string): string {
  return `${encodeURIComponent(name)}.html`;
}

/**
 * The record of an executed notebook.
 *
 * @param notebook  after a complete run
 * @param page  its page
 * @returns question, answer, sketch, readers, texts of the page, check results, and what a handout takes
 * @throws ReportError as the page does
 * Example: recordOf(notebook, page).question → "How hard do I have to hold?"
 */
export function recordOf(notebook: ExecutedNotebook, page: string): ReportRecord {
  const outline = outlineOf(notebook, new PageIds());
  const { name, question, answer, picture, checks } = outline;
  return {
    name,
    ...(notebook.place !== undefined && { place: notebook.place }),
    question: question.text,
    answer: answer.text,
    ...(picture && { thumbnail: thumbnailOf(picture) }),
    roles: notebook.roles ?? allRoles,
    sections: pageSections(page),
    checks,
    handout: handoutOf(notebook, outline),
  };
}

/** The record as text of its file. */
export function recordText(record: ReportRecord): string {
  return `${JSON.stringify(record, undefined, 1)}\n`;
}

function isCheck(value: unknown): value is CheckResult {
  if (typeof value !== "object" || value === null) return false;
  const check = value as Partial<Record<keyof CheckResult, unknown>>;
  const texts = [check.id, check.quantity, check.unit, check.place];
  const numbers = [check.computed, check.expected, check.allowed, check.deviation];
  return (
    texts.every((text) => typeof text === "string") &&
    numbers.every((number) => typeof number === "number") &&
    typeof check.holds === "boolean" &&
    isEvidenceKind(check.evidence) &&
    isStatus(check.status) &&
    (check.source === undefined || (typeof check.source === "string" && Object.hasOwn(bibliography, check.source)))
  );
}

/**
 * A record read back from its file.
 *
 * @param text  the file
 * @param place  its path, for the message
 * @returns the record
 * @throws ReportError when it is not a record of this version
 * Example: readRecord(recordText(record), "data/a.json").name → "a"
 */
export function readRecord(text: string, place: string): ReportRecord {
  const broken = new ReportError(place, "not a record of this version; build all reports again.");
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw broken;
  }
  if (typeof value !== "object" || value === null) throw broken;
  const record = value as Partial<Record<keyof ReportRecord, unknown>>;
  const { name, place: onIndex, question, answer, thumbnail, roles, sections, checks, handout } = record;
  if (typeof name !== "string" || typeof question !== "string" || typeof answer !== "string") throw broken;
  if (!Array.isArray(checks) || !checks.every(isCheck)) throw broken;
  if (thumbnail !== undefined && !isThumbnail(thumbnail)) throw broken;
  if (!isRoleList(roles) || !Array.isArray(sections) || !sections.every(isPageSection)) throw broken;
  if (!isHandoutContent(handout)) throw broken;
  if (onIndex !== undefined && typeof onIndex !== "number") throw broken;
  return {
    name,
    ...(onIndex !== undefined && { place: onIndex }),
    question,
    answer,
    ...(thumbnail && { thumbnail }),
    roles,
    sections,
    checks,
    handout,
  };
}
