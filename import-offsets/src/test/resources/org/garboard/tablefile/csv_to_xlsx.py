"""Writes a CSV as .xlsx with a library that is not ours: cells that look like numbers as numbers, others as text.

Usage: csv_to_xlsx.py CSV XLSX SHEET [CELL=VALUE ...], where VALUE date:2026-04-03 sets a date and =… a formula.
"""
import csv
import datetime
import sys

import openpyxl

book = openpyxl.Workbook()
first = book.active
first.title = "Log"
first["A1"] = "not the table"
if sys.argv[3] == "FIRST":
    sheet = first
    sheet["A1"] = None
else:
    sheet = book.create_sheet(sys.argv[3])
with open(sys.argv[1], encoding="utf-8", newline="") as source:
    for r, row in enumerate(csv.reader(source), 1):
        for c, text in enumerate(row, 1):
            if text:
                try:
                    sheet.cell(r, c, float(text) if "." in text else int(text))
                except ValueError:
                    sheet.cell(r, c, text)
for change in sys.argv[4:]:
    place, value = change.split("=", 1)
    if value.startswith("date:"):
        sheet[place] = datetime.date.fromisoformat(value[5:])
    else:
        sheet[place] = value
book.save(sys.argv[2])
