import type { Area } from "../../engine/area";
import type { Book } from "../../engine/book";
import type { Comment as BookComment, CommentEvent, Mention, Remark, Reply } from "../../engine/comments";
import { refuse } from "../errors";
import type { Unsubscribe } from "../proxies/eventHandlers";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { cellGiven, oneOf, text, wholeNumber } from "./arguments";
import { Range } from "./range";

type CommentsOf = { readonly book: Book; readonly sheetId: string | null };
type CommentTarget = { readonly book: Book; readonly id: string };
type ReplyTarget = CommentTarget & { readonly replyId: string };

/** Who writes here: the host knows one person, without an address. */
const author = { name: "Coach", email: "" } as const;

const found = ({ book, id }: CommentTarget) => book.comments.get(id) ?? refuse("ItemNotFound", "The comment is gone.");
const commentOf = (target: CommentTarget): BookComment => found(target).comment;
const replyOf = (target: ReplyTarget): Reply =>
  commentOf(target).replies.find(({ id }) => id === target.replyId) ?? refuse("ItemNotFound", "The reply is gone.");

const bare = (rich: string): string => rich.replace(/<at id="[^"]*">(.*?)<\/at>/gs, "@$1");

/** What is said, of a plain text or of one with mentions (excel/excel-add-ins-comments). */
function remark(content: unknown, type: unknown): Remark {
  const kind = oneOf(String(type ?? "Plain"), ["Plain", "Mention"], "The content type");
  if (kind === "Plain" && typeof content === "string") return { content, richContent: content, mentions: [] };
  const rich = content as { richContent?: unknown; mentions?: readonly Mention[] } | null;
  if (typeof content !== "object" || typeof rich?.richContent !== "string") {
    return refuse("InvalidArgument", "A comment is a text, or a rich text with its mentions.");
  }
  const mentions = (rich.mentions ?? []).map(({ email, id, name }) => ({ email, id, name }));
  return { content: bare(rich.richContent), richContent: rich.richContent, mentions };
}

/** What comments and replies have in common. */
function said<Target>(read: (target: Target) => Reply, edit: (target: Target, remark: Remark) => void) {
  return {
    authorEmail: { get: () => author.email },
    authorName: { get: () => author.name },
    content: {
      get: (target: Target) => read(target).content,
      set: (target: Target, content: string) => edit(target, remark(text(content, "A comment"), "Plain")),
    },
    contentType: {
      get: (target: Target) => (read(target).mentions.length > 0 ? "Mention" : "Plain") as Excel.ContentType,
    },
    creationDate: { get: (target: Target) => new Date(read(target).created) },
    mentions: { get: (target: Target) => read(target).mentions.map((mention) => ({ ...mention })) },
    richContent: { get: (target: Target) => read(target).richContent },
  };
}

const editComment = ({ book, id }: CommentTarget, said: Remark) => book.comments.change(id, said, "CommentEdited");
const editReply = ({ book, id, replyId }: ReplyTarget, said: Remark) => book.comments.changeReply(id, replyId, said);

export const Comment: ProxyClass<Excel.Comment, CommentTarget> = proxyClass<Excel.Comment, CommentTarget>("Comment", {
  scalars: {
    ...said(commentOf, editComment),
    id: { get: ({ id }) => id },
    resolved: {
      get: (target) => commentOf(target).resolved,
      set: ({ book, id }, resolved) =>
        book.comments.change(id, { resolved }, resolved ? "CommentResolved" : "CommentReopened"),
    },
  },
  objects: { replies: { of: () => CommentReplyCollection, at: (target) => target } },
  methods: {
    delete: ({ book, id }) => book.comments.remove(id),
    getLocation: { of: () => Range, at: (target) => found(target).cell },
    updateMentions: (target, content) => editComment(target, remark(content, "Mention")),
  },
});

export const CommentReply: ProxyClass<Excel.CommentReply, ReplyTarget> = proxyClass<Excel.CommentReply, ReplyTarget>(
  "CommentReply",
  {
    scalars: {
      ...said(replyOf, editReply),
      id: { get: ({ replyId }) => replyId },
      resolved: { get: (target) => commentOf(target).resolved },
    },
    methods: {
      delete: ({ book, id, replyId }) => book.comments.changeReply(id, replyId, null),
      getLocation: { of: () => Range, at: (target) => found(target).cell },
      getParentComment: { of: () => Comment, at: ({ book, id }) => ({ book, id }) },
      updateMentions: (target, content) => editReply(target, remark(content, "Mention")),
    },
  },
);

const repliesOf = (target: CommentTarget): ReplyTarget[] =>
  commentOf(target).replies.map(({ id }) => ({ ...target, replyId: id }));

const replyById = (target: CommentTarget, given: unknown): ReplyTarget | null => {
  const wanted = text(given, "A reply's id");
  return repliesOf(target).find(({ replyId }) => replyId === wanted) ?? null;
};

export const CommentReplyCollection: ProxyClass<Excel.CommentReplyCollection, CommentTarget> = proxyClass<
  Excel.CommentReplyCollection,
  CommentTarget
>("CommentReplyCollection", {
  items: { of: () => CommentReply, list: repliesOf },
  methods: {
    add: {
      of: () => CommentReply,
      at: (target, content, type) => ({
        ...target,
        replyId: target.book.comments.addReply(commentOf(target).id, remark(content, type)),
      }),
    },
    getCount: { answer: (target) => repliesOf(target).length },
    getItem: { of: () => CommentReply, at: replyById },
    getItemAt: {
      of: () => CommentReply,
      at: (target, index) => repliesOf(target)[wholeNumber(index, "The index", 0)] ?? null,
    },
    getItemOrNullObject: { of: () => CommentReply, at: replyById },
  },
});

const listed = ({ book, sheetId }: CommentsOf): CommentTarget[] =>
  book.comments.list(sheetId).map(({ comment }) => ({ book, id: comment.id }));

const byId = (comments: CommentsOf, given: unknown): CommentTarget | null => {
  const wanted = text(given, "A comment's id");
  return listed(comments).find(({ id }) => id === wanted) ?? null;
};

const cellFor = (comments: CommentsOf, given: unknown): Area => cellGiven(comments, given, "A comment");

function atCell(comments: CommentsOf, given: unknown): CommentTarget | null {
  const { sheetId, row, column } = cellFor(comments, given);
  const at = comments.book.comments.list(sheetId).find(({ cell }) => cell.row === row && cell.column === column);
  return at ? { book: comments.book, id: at.comment.id } : null;
}

function told<Arguments>(
  { book, sheetId }: CommentsOf,
  kind: CommentEvent["kind"],
  type: string,
  tell: (args: Arguments) => void,
): Unsubscribe {
  return book.comments.listen((event) => {
    if (event.kind !== kind || (sheetId !== null && event.sheetId !== sheetId)) return;
    tell({
      type,
      worksheetId: event.sheetId,
      source: "Local",
      commentDetails: [{ commentId: event.commentId, replyIds: [...event.replyIds] }],
      ...(event.change ? { changeType: event.change } : {}),
    } as Arguments);
  });
}

export const CommentCollection: ProxyClass<Excel.CommentCollection, CommentsOf> = proxyClass<
  Excel.CommentCollection,
  CommentsOf
>("CommentCollection", {
  items: { of: () => Comment, list: listed },
  methods: {
    add: {
      of: () => Comment,
      at: (comments, given, content, type) => {
        const cell = cellFor(comments, given);
        if (atCell(comments, cell)) refuse("InvalidArgument", "The cell has a comment.");
        return { book: comments.book, id: comments.book.comments.add(cell, remark(content, type)) };
      },
    },
    getCount: { answer: (comments) => listed(comments).length },
    getItem: { of: () => Comment, at: byId },
    getItemAt: {
      of: () => Comment,
      at: (comments, index) => listed(comments)[wholeNumber(index, "The index", 0)] ?? null,
    },
    getItemByCell: { of: () => Comment, at: atCell },
    getItemByReplyId: {
      of: () => Comment,
      at: (comments, given) =>
        listed(comments).find((target) => commentOf(target).replies.some(({ id }) => id === given)) ?? null,
    },
    getItemOrNullObject: { of: () => Comment, at: byId },
  },
  events: {
    onAdded: (comments, tell) => told(comments, "added", "CommentAdded", tell),
    onChanged: (comments, tell) => told(comments, "changed", "CommentChanged", tell),
    onDeleted: (comments, tell) => told(comments, "deleted", "CommentDeleted", tell),
  },
});
