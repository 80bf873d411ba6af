import type { Area } from "./area";
import type { Book } from "./book";
import type { CellMarks } from "./cellMarks";
import { freshIdentity } from "./identity";
import { mark } from "./markCells";

export type Mention = { readonly email: string; readonly id: number; readonly name: string };

/** What a comment or a reply says. Mentions stand in `richContent` as `<at id="0">Name</at>`. */
export type Remark = {
  readonly content: string;
  readonly richContent: string;
  readonly mentions: readonly Mention[];
};

export type Reply = Remark & { readonly id: string; readonly created: Date };

export type Comment = Reply & { readonly resolved: boolean; readonly replies: readonly Reply[] };

export type CommentChange =
  | "CommentEdited"
  | "CommentResolved"
  | "CommentReopened"
  | "ReplyAdded"
  | "ReplyDeleted"
  | "ReplyEdited";

export type CommentEvent = {
  readonly kind: "added" | "deleted" | "changed";
  readonly change: CommentChange | null;
  readonly sheetId: string;
  readonly commentId: string;
  readonly replyIds: readonly string[];
};

/**
 * The conversations at cells. A cell carries the id of its comment, so that the comment moves and goes with the cell;
 * what is said is the host's own, and undo does not cover it.
 */
export class Comments {
  readonly #book: Book;
  readonly #comments = new Map<string, Comment>();
  readonly #listeners = new Set<(event: CommentEvent) => void>();

  constructor(book: Book) {
    this.#book = book;
  }

  /** The comments of a sheet or of all, in the order they were made. Those whose cell is gone are gone. */
  list(sheetId: string | null): { readonly comment: Comment; readonly cell: Area }[] {
    if (this.#comments.size === 0) return [];
    const cells = this.#cells();
    return [...this.#comments.values()].flatMap((comment) => {
      const cell = cells.get(comment.id);
      return cell && (sheetId === null || cell.sheetId === sheetId) ? [{ comment, cell }] : [];
    });
  }

  get(id: string): { readonly comment: Comment; readonly cell: Area } | null {
    return this.list(null).find(({ comment }) => comment.id === id) ?? null;
  }

  add(cell: Area, remark: Remark): string {
    const id = freshIdentity();
    this.#comments.set(id, { ...remark, id, created: new Date(), resolved: false, replies: [] });
    mark([cell], { comment: id });
    this.#tell({ kind: "added", change: null, sheetId: cell.sheetId, commentId: id, replyIds: [] });
    return id;
  }

  remove(id: string): void {
    const found = this.get(id);
    if (!found) return;
    mark([found.cell], { comment: null });
    this.#comments.delete(id);
    const replyIds = found.comment.replies.map((reply) => reply.id);
    this.#tell({ kind: "deleted", change: null, sheetId: found.cell.sheetId, commentId: id, replyIds });
  }

  change(id: string, changed: Partial<Comment>, change: CommentChange, replyIds: readonly string[] = []): void {
    const found = this.get(id);
    if (!found) return;
    this.#comments.set(id, { ...found.comment, ...changed });
    this.#tell({ kind: "changed", change, sheetId: found.cell.sheetId, commentId: id, replyIds });
  }

  addReply(commentId: string, remark: Remark): string {
    const id = freshIdentity();
    const replies = this.#comments.get(commentId)?.replies ?? [];
    this.change(commentId, { replies: [...replies, { ...remark, id, created: new Date() }] }, "ReplyAdded", [id]);
    return id;
  }

  /** Says a reply anew, or with null takes it away. */
  changeReply(commentId: string, id: string, remark: Remark | null): void {
    const replies = this.#comments.get(commentId)?.replies ?? [];
    const left = replies.flatMap((reply) => (reply.id === id ? (remark ? [{ ...reply, ...remark }] : []) : [reply]));
    this.change(commentId, { replies: left }, remark ? "ReplyEdited" : "ReplyDeleted", [id]);
  }

  /** Calls back when a comment comes, goes or changes; answers how to stop. */
  listen(listener: (event: CommentEvent) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #tell(event: CommentEvent): void {
    if (!this.#book.changes.enabled) return;
    for (const listener of [...this.#listeners]) listener(event);
  }

  /** Where the comments stand now, by their ids. */
  #cells(): Map<string, Area> {
    const book = this.#book;
    const cells = new Map<string, Area>();
    for (const sheet of book.workbook.getSheets()) {
      const sheetId = sheet.getSheetId();
      sheet.getCellMatrix().forValue((row, column, cell) => {
        const id = (cell?.custom as CellMarks | undefined)?.comment;
        if (id && !cells.has(id)) cells.set(id, { book, sheetId, row, column, rowCount: 1, columnCount: 1 });
      });
    }
    return cells;
  }
}
