"""Writes the sample files of the .xlsx tests with openpyxl 3.0 (MIT), a library independent of this project.

Run in this folder: python3 write_samples.py. The files it wrote are kept beside it, so that tests need no Python.
"""
from datetime import datetime

from openpyxl import Workbook
from openpyxl.chart import BarChart, Reference
from openpyxl.comments import Comment
from openpyxl.formatting.rule import CellIsRule, ColorScaleRule, DataBarRule, FormulaRule, IconSetRule, Rule
from openpyxl.styles import Alignment, Border, Color, Font, PatternFill, Side
from openpyxl.styles.differential import DifferentialStyle
from openpyxl.workbook.defined_name import DefinedName
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.table import Table, TableStyleInfo

STAMP = datetime(2026, 8, 11)


def everything():
    book = Workbook()
    sheet = book.active
    sheet.title = "Hops & jumps"
    sheet.append(["Athlete", "Left (cm)", "Right (cm)", "Best", "Day"])
    for row, (name, left, right) in enumerate(
        [("Aelvi", 164.25, 158), ("Brynka", 0.1 + 0.2, 159.123456789012), ("Dagnja ", 162, 165)], start=2
    ):
        sheet.append([name, left, right, f"=MAX(B{row}:C{row})", datetime(2026, 8, 11, 9, 30, 15)])
        sheet.cell(row, 5).number_format = "yyyy-mm-dd hh:mm"
        sheet.cell(row, 2).number_format = "0.0"
    table = Table(displayName="Hop_trials", ref="A1:E4")
    table.tableStyleInfo = TableStyleInfo(name="TableStyleLight9", showRowStripes=True)
    sheet.add_table(table)
    sheet["G1"] = "Bold red"
    sheet["G1"].font = Font(name="Arial", size=14, bold=True, italic=True, underline="single", color="FFC00000")
    sheet["G2"] = "Theme"
    sheet["G2"].fill = PatternFill("solid", fgColor=Color(theme=4, tint=0.5999938962981048))
    sheet["G3"] = "Boxed"
    thin = Side(style="thin", color="FF0F6B5C")
    sheet["G3"].border = Border(left=thin, right=thin, top=Side(style="double"), bottom=Side(style="medium"))
    sheet["G4"] = "Wrapped and centred"
    sheet["G4"].alignment = Alignment(horizontal="center", vertical="top", wrap_text=True)
    sheet["G5"] = True
    sheet["G6"] = "#N/A"
    sheet["G6"].data_type = "e"
    sheet["G7"] = "1.82 m"
    sheet["G8"] = "=STDEV(B2:B4)"
    sheet["G9"] = "<&> \"quoted\"\nsecond line"
    sheet["G1"].comment = Comment("Measured twice", "Coach")
    sheet.merge_cells("I1:J2")
    sheet["I1"] = "Merged"
    sheet.freeze_panes = "B2"
    sheet.column_dimensions["A"].width = 24.5
    sheet.column_dimensions["F"].hidden = True
    sheet.row_dimensions[3].height = 31.5
    sheet.row_dimensions[4].hidden = True
    sheet.sheet_properties.tabColor = "FF0F6B5C"
    sheet.sheet_view.showGridLines = False

    formats = sheet.conditional_formatting
    red = PatternFill("solid", bgColor="FFF4CCCC")
    formats.add("B2:B4", CellIsRule(operator="greaterThan", formula=["160"], fill=red))
    formats.add("B2:B4", CellIsRule(operator="lessThan", formula=["$C$2"], font=Font(bold=True)))
    formats.add("C2:C4", FormulaRule(formula=["C2>B2"], stopIfTrue=True, fill=red))
    formats.add("C2:C4", ColorScaleRule(start_type="min", start_color="FFFFFFFF", end_type="max", end_color="FF0F6B5C"))
    formats.add("D2:D4", DataBarRule(start_type="min", end_type="max", color="FF638EC6"))
    formats.add("D2:D4", IconSetRule("3Arrows", "percent", [0, 33, 67]))
    formats.add("A2:A4", Rule(type="duplicateValues", dxf=DifferentialStyle(fill=red)))

    side = DataValidation(type="list", formula1='"Left,Right"', allow_blank=True, showErrorMessage=True, error="Left or Right")
    distance = DataValidation(type="decimal", operator="between", formula1="50", formula2="300", showErrorMessage=True)
    sheet.add_data_validation(side)
    sheet.add_data_validation(distance)
    side.add("H2:H20")
    distance.add("B2:C100")

    other = book.create_sheet("Second")
    other["A1"] = "='Hops & jumps'!B2*2"
    other.sheet_state = "hidden"
    filtered = book.create_sheet("Filtered")
    for row in [["Role", "n"], ["Wing", 7], ["Back", 11]]:
        filtered.append(row)
    filtered.auto_filter.ref = "A1:B3"
    filtered.auto_filter.add_filter_column(0, ["Wing"])
    filtered.row_dimensions[3].hidden = True

    book.defined_names.append(DefinedName("Left_trials", attr_text="'Hops & jumps'!$B$2:$B$4"))
    book.defined_names.append(DefinedName("Limit", attr_text="10"))
    book.defined_names.append(DefinedName("Local", attr_text="Filtered!$A$1", localSheetId=2))

    chart = BarChart()
    chart.title = "Hops"
    chart.add_data(Reference(sheet, min_col=2, max_col=3, min_row=1, max_row=4), titles_from_data=True)
    chart.set_categories(Reference(sheet, min_col=1, min_row=2, max_row=4))
    sheet.add_chart(chart, "L2")
    save(book, "everything.xlsx")


def save(book, name):
    book.properties.created = book.properties.modified = STAMP
    book.save(name)


everything()
