"""Prints as JSON what openpyxl (MIT, a library independent of this project) reads in an .xlsx file."""
import json
import sys

from openpyxl import load_workbook

workbook = load_workbook(sys.argv[1])
names = workbook.defined_names
named = names.values() if hasattr(names, "values") else names.definedName


def shown(value):
    return value if isinstance(value, (int, float, str, bool)) or value is None else str(value)


def sheet_of(sheet):
    cells = [cell for row in sheet.iter_rows() for cell in row if cell.value is not None]
    return {
        "values": {cell.coordinate: shown(cell.value) for cell in cells},
        "formats": {cell.coordinate: cell.number_format for cell in cells},
        "widths": {letters: round(column.width, 1) for letters, column in sheet.column_dimensions.items() if column.width},
        "tables": {table.name: table.ref for table in sheet.tables.values()},
        "notes": {cell.coordinate: cell.comment.text for row in sheet.iter_rows() for cell in row if cell.comment},
        "merged": sorted(str(area) for area in sheet.merged_cells.ranges),
        "frozen": sheet.freeze_panes,
        "charts": len(sheet._charts),
    }


print(json.dumps({
    "names": {name.name: name.attr_text for name in named},
    "sheets": {sheet.title: sheet_of(sheet) for sheet in workbook.worksheets},
}))
