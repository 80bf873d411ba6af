import { errorOf, onSheet, openHost } from "./openHost";

/** Page: excel/excel-add-ins-comments. */
const opened = openHost();

const mention = { email: "ada@fjordvik.example", id: 0, name: "Ada Berg" };

test("a comment is added to a cell, edited, resolved and found by its cell and id", () =>
  onSheet(opened.host, async (sheet, context) => {
    const added = sheet.comments.add("B2", "Ask for a retest.");
    added.load("id,content,authorName,creationDate,resolved,contentType");
    await context.sync();
    expect([added.content, added.authorName, added.resolved, added.contentType]).toEqual([
      "Ask for a retest.",
      "Coach",
      false,
      "Plain",
    ]);
    expect(added.creationDate.toDateString()).toBe(new Date().toDateString());
    added.content = "Retest on Friday.";
    added.resolved = true;
    const byCell = context.workbook.comments.getItemByCell("Sheet1!B2").load("id,content,resolved");
    const byId = context.workbook.comments.getItem(added.id).load("content");
    const count = sheet.comments.getCount();
    await context.sync();
    expect([byCell.id, byCell.content, byCell.resolved, byId.content, count.value]).toEqual([
      added.id,
      "Retest on Friday.",
      true,
      "Retest on Friday.",
      1,
    ]);
  }));

test("a comment moves with its cell and goes with its row", () =>
  onSheet(opened.host, async (sheet, context) => {
    const comment = sheet.comments.add("B2", "Sore knee.");
    sheet.getRange("1:1").insert("Down");
    const moved = comment.getLocation().load("address");
    await context.sync();
    expect(moved.address).toBe("Sheet1!B3");
    sheet.getRange("3:3").delete("Up");
    const left = sheet.comments.getCount();
    await context.sync();
    expect(left.value).toBe(0);
  }));

test("copying a cell copies no comment, sorting takes it along", () =>
  onSheet(opened.host, async (sheet, context) => {
    sheet.getRange("A1:A2").values = [[2], [1]];
    const comment = sheet.comments.add("A1", "Measured twice.");
    sheet.getRange("C1").copyFrom("A1");
    sheet.getRange("A1:A2").sort.apply([{ key: 0, ascending: true }]);
    const at = comment.getLocation().load("address");
    const count = sheet.comments.getCount();
    await context.sync();
    expect([at.address, count.value]).toEqual(["Sheet1!A2", 1]);
  }));

test("replies are added, edited and deleted; they know their comment", () =>
  onSheet(opened.host, async (sheet, context) => {
    const comment = sheet.comments.add("A1", "Who times?");
    const reply = comment.replies.add("I do.");
    comment.replies.add("With gates.");
    reply.content = "I do, on Monday.";
    comment.replies.getItemAt(1).delete();
    comment.replies.load("items/content,items/resolved");
    const parent = reply.getParentComment().load("content");
    await context.sync();
    expect(comment.replies.items.map(({ content }) => content)).toEqual(["I do, on Monday."]);
    expect(parent.content).toBe("Who times?");
  }));

test("mentions stand in the rich text and are told; plain content has their names", () =>
  onSheet(opened.host, async (sheet, context) => {
    const content = { mentions: [mention], richContent: '<at id="0">Ada Berg</at> please look' };
    const comment = sheet.comments.add("A1", content, "Mention" as Excel.ContentType.mention);
    comment.load("content,richContent,mentions,contentType");
    await context.sync();
    expect(comment.toJSON()).toMatchObject({
      content: "@Ada Berg please look",
      richContent: content.richContent,
      mentions: [mention],
      contentType: "Mention",
    });
  }));

test("a second comment at a cell, and one for several cells, are refused", async () => {
  for (const address of ["A1", "A1:B2"]) {
    const error = await errorOf(
      onSheet(opened.host, async (sheet, context) => {
        sheet.comments.add("A1", "First");
        sheet.comments.add(address, "Second");
        await context.sync();
      }),
    );
    expect(error.code).toBe("InvalidArgument");
  }
});

test("events tell of comments that come, change and go", async () => {
  const told: unknown[] = [];
  await onSheet(opened.host, async (sheet, context) => {
    sheet.comments.onAdded.add(async ({ type, commentDetails }) => void told.push([type, commentDetails.length]));
    sheet.comments.onChanged.add(async ({ changeType }) => void told.push(changeType));
    sheet.comments.onDeleted.add(async ({ type }) => void told.push(type));
    await context.sync();
    const comment = sheet.comments.add("A1", "Look");
    comment.replies.add("Looked");
    comment.resolved = true;
    comment.resolved = false;
    comment.content = "Look again";
    comment.delete();
    await context.sync();
  });
  expect(told).toEqual([
    ["CommentAdded", 1],
    "ReplyAdded",
    "CommentResolved",
    "CommentReopened",
    "CommentEdited",
    "CommentDeleted",
  ]);
});
