// Written by generate.mjs from @types/office-js; change that, not this.

/** Class -> its published members: "name@set", methods "name()@set"; a member without a set is a preview. */
export const publishedMembers: Readonly<Record<string, string>> = {
  AllowEditRange:
    "address@ExcelApiOnline/1.1 isPasswordProtected@ExcelApiOnline/1.1 title@ExcelApiOnline/1.1 delete()@ExcelApiOnline/1.1 pauseProtection()@ExcelApiOnline/1.1 setPassword()@ExcelApiOnline/1.1",
  AllowEditRangeCollection:
    "items@ add()@ExcelApiOnline/1.1 getCount()@ExcelApiOnline/1.1 getItem()@ExcelApiOnline/1.1 getItemAt()@ExcelApiOnline/1.1 getItemOrNullObject()@ExcelApiOnline/1.1 pauseProtection()@ExcelApiOnline/1.1",
  Query: "error@1.14 loadedTo@1.14 loadedToDataModel@1.14 name@1.14 refreshDate@1.14 rowsLoadedCount@1.14",
  QueryCollection: "items@ getCount()@1.14 getItem()@1.14",
  LinkedWorkbook: "id@ExcelApiOnline/1.1 breakLinks()@ExcelApiOnline/1.1 refresh()@ExcelApiOnline/1.1",
  LinkedWorkbookCollection:
    "items@ workbookLinksRefreshMode@ExcelApiOnline/1.1 breakAllLinks()@ExcelApiOnline/1.1 getItem()@ExcelApiOnline/1.1 getItemOrNullObject()@ExcelApiOnline/1.1 refreshAll()@ExcelApiOnline/1.1",
  Runtime: "enableEvents@1.8",
  Application:
    "activeWindow@ExcelApiDesktop/1.1 cultureInfo@1.11 iterativeCalculation@1.9 windows@ExcelApiDesktop/1.1 calculationEngineVersion@1.9 calculationMode@1.1 calculationState@1.9 decimalSeparator@1.11 thousandsSeparator@1.11 useSystemSeparators@1.11 calculate()@1.1 checkSpelling()@ExcelApiDesktop/1.1 enterEditingMode()@ExcelApiDesktop/1.1 suspendApiCalculationUntilNextSync()@1.6 suspendScreenUpdatingUntilNextSync()@1.9 union()@ExcelApiDesktop/1.1",
  IterativeCalculation: "enabled@1.9 maxChange@1.9 maxIteration@1.9",
  Workbook:
    "application@1.1 bindings@1.1 comments@1.10 customXmlParts@1.5 dataConnections@1.7 functions@1.2 linkedEntityDataDomains@1.19 linkedWorkbooks@ExcelApiOnline/1.1 names@1.1 notes@1.18 pivotTableStyles@1.10 pivotTables@1.3 properties@1.7 protection@1.7 queries@1.14 settings@1.4 slicerStyles@1.10 slicers@1.10 styles@1.7 tableStyles@1.10 tables@1.1 timelineStyles@1.10 worksheets@1.1 autoSave@1.9 calculationEngineVersion@1.9 chartDataPointTrack@1.9 isDirty@1.9 name@1.7 previouslySaved@1.9 readOnly@1.8 usePrecisionAsDisplayed@1.9 close()@1.11 focus()@ExcelApiDesktop/1.1 getActiveCell()@1.7 getActiveChart()@1.9 getActiveChartOrNullObject()@1.9 getActiveShape()@1.19 getActiveShapeOrNullObject()@1.19 getActiveSlicer()@1.10 getActiveSlicerOrNullObject()@1.10 getIsActiveCollabSession()@1.9 getLinkedEntityCellValue()@1.16 getSelectedRange()@1.1 getSelectedRanges()@1.9 insertWorksheetsFromBase64()@1.13 save()@1.11 onActivated@1.13 onAutoSaveSettingChanged@1.9 onSelectionChanged@1.2",
  WorkbookProtection: "protected@1.7 protect()@1.7 unprotect()@1.7",
  WorkbookCreated: "",
  Worksheet:
    "autoFilter@1.9 charts@1.1 comments@1.10 customProperties@1.12 freezePanes@1.7 horizontalPageBreaks@1.9 namedSheetViews@ExcelApiOnline/1.1 names@1.4 notes@1.18 pageLayout@1.9 pivotTables@1.3 protection@1.2 shapes@1.9 slicers@1.10 tables@1.1 verticalPageBreaks@1.9 enableCalculation@1.9 id@1.1 name@1.1 position@1.1 showDataTypeIcons@1.19 showGridlines@1.8 showHeadings@1.8 standardHeight@1.7 standardWidth@1.7 tabColor@1.7 tabId@1.14 visibility@1.1 activate()@1.1 calculate()@1.6 checkSpelling()@ExcelApiDesktop/1.1 clearArrows()@ExcelApiDesktop/1.1 copy()@1.7 delete()@1.1 evaluate()@ExcelApiDesktop/1.1 findAll()@1.9 findAllOrNullObject()@1.9 getCell()@1.1 getNext()@1.5 getNextOrNullObject()@1.5 getPrevious()@1.5 getPreviousOrNullObject()@1.5 getRange()@1.1 getRangeByIndexes()@1.7 getRanges()@1.9 getUsedRange()@1.1 getUsedRangeOrNullObject()@1.4 replaceAll()@1.9 showOutlineLevels()@1.10 onActivated@1.7 onCalculated@1.8 onChanged@1.7 onColumnSorted@1.10 onDeactivated@1.7 onFormatChanged@1.9 onFormulaChanged@1.13 onNameChanged@1.17 onProtectionChanged@1.14 onRowHiddenChanged@1.11 onRowSorted@1.10 onSelectionChanged@1.7 onSingleClicked@1.10 onVisibilityChanged@1.17",
  WorksheetCollection:
    "items@ add()@1.1 getActiveWorksheet()@1.1 getCount()@1.4 getFirst()@1.5 getItem()@1.1 getItemOrNullObject()@1.4 getLast()@1.5 onActivated@1.7 onAdded@1.7 onCalculated@1.8 onChanged@1.9 onColumnSorted@1.10 onDeactivated@1.7 onDeleted@1.7 onFormatChanged@1.9 onFormulaChanged@1.13 onMoved@1.17 onNameChanged@1.17 onProtectionChanged@1.14 onRowHiddenChanged@1.11 onRowSorted@1.10 onSelectionChanged@1.9 onSingleClicked@1.10 onVisibilityChanged@1.17",
  WorksheetProtection:
    "allowEditRanges@ExcelApiOnline/1.1 canPauseProtection@ExcelApiOnline/1.1 isPasswordProtected@ExcelApiOnline/1.1 isPaused@ExcelApiOnline/1.1 options@1.2 protected@1.2 savedOptions@ExcelApiOnline/1.1 checkPassword()@ExcelApiOnline/1.1 pauseProtection()@ExcelApiOnline/1.1 protect()@1.2 resumeProtection()@ExcelApiOnline/1.1 setPassword()@ExcelApiOnline/1.1 unprotect()@1.7 updateOptions()@ExcelApiOnline/1.1",
  WorksheetFreezePanes:
    "freezeAt()@1.7 freezeColumns()@1.7 freezeRows()@1.7 getLocation()@1.7 getLocationOrNullObject()@1.7 unfreeze()@1.7",
  Range:
    "conditionalFormats@1.6 dataValidation@1.8 format@1.1 sort@1.2 worksheet@1.1 address@1.1 addressLocal@1.1 cellCount@1.1 columnCount@1.1 columnHidden@1.2 columnIndex@1.1 control@1.18 formulaArray@ExcelApiDesktop/1.1 formulas@1.1 formulasLocal@1.1 formulasR1C1@1.2 hasSpill@1.12 height@1.10 hidden@1.2 hyperlink@1.7 isEntireColumn@1.7 isEntireRow@1.7 left@1.10 linkedDataTypeState@1.9 numberFormat@1.1 numberFormatCategories@1.12 numberFormatLocal@1.7 rowCount@1.1 rowHidden@1.2 rowIndex@1.1 savedAsArray@1.12 style@1.7 text@1.1 top@1.10 valueTypes@1.1 values@1.1 valuesAsJson@1.16 valuesAsJsonLocal@1.16 width@1.10 autoFill()@1.9 calculate()@1.6 checkSpelling()@ExcelApiDesktop/1.1 clear()@1.1 clearOrResetContents()@1.18 convertDataTypeToText()@1.9 convertToLinkedDataType()@1.9 copyFrom()@1.9 delete()@1.1 find()@1.9 findOrNullObject()@1.9 flashFill()@1.9 getAbsoluteResizedRange()@1.7 getBoundingRect()@1.1 getCell()@1.1 getCellProperties()@1.9 getColumn()@1.1 getColumnProperties()@1.9 getColumnsAfter()@1.2 getColumnsBefore()@1.2 getDependents()@1.15 getDirectDependents()@1.13 getDirectPrecedents()@1.12 getDisplayedCellProperties()@1.19 getEntireColumn()@1.1 getEntireRow()@1.1 getExtendedRange()@1.13 getImage()@1.7 getIntersection()@1.1 getIntersectionOrNullObject()@1.4 getLastCell()@1.1 getLastColumn()@1.1 getLastRow()@1.1 getMergedAreasOrNullObject()@1.13 getOffsetRange()@1.1 getPivotTables()@1.12 getPrecedents()@1.14 getRangeEdge()@1.13 getResizedRange()@1.2 getRow()@1.1 getRowProperties()@1.9 getRowsAbove()@1.2 getRowsBelow()@1.2 getSpecialCells()@1.9 getSpecialCellsOrNullObject()@1.9 getSpillParent()@1.12 getSpillParentOrNullObject()@1.12 getSpillingToRange()@1.12 getSpillingToRangeOrNullObject()@1.12 getSurroundingRegion()@1.7 getTables()@1.9 getUsedRange()@1.1 getUsedRangeOrNullObject()@1.4 getVisibleView()@1.3 group()@1.10 hideGroupDetails()@1.10 insert()@1.1 merge()@1.2 moveTo()@1.11 removeDuplicates()@1.9 replaceAll()@1.9 select()@1.1 setCellProperties()@1.9 setColumnProperties()@1.9 setDirty()@1.9 setRowProperties()@1.9 showCard()@1.7 showDependents()@ExcelApiDesktop/1.1 showGroupDetails()@1.10 showPrecedents()@ExcelApiDesktop/1.1 ungroup()@1.10 unmerge()@1.2",
  RangeAreas:
    "areas@1.9 conditionalFormats@1.9 dataValidation@1.9 format@1.9 worksheet@1.9 address@1.9 addressLocal@1.9 areaCount@1.9 cellCount@1.9 isEntireColumn@1.9 isEntireRow@1.9 style@1.9 calculate()@1.9 clear()@1.9 clearOrResetContents()@1.18 convertDataTypeToText()@1.9 convertToLinkedDataType()@1.9 copyFrom()@1.9 getEntireColumn()@1.9 getEntireRow()@1.9 getIntersection()@1.9 getIntersectionOrNullObject()@1.9 getOffsetRangeAreas()@1.9 getSpecialCells()@1.9 getSpecialCellsOrNullObject()@1.9 getTables()@1.9 getUsedRangeAreas()@1.9 getUsedRangeAreasOrNullObject()@1.9 select()@1.18 setDirty()@1.9",
  WorkbookRangeAreas:
    "areas@1.12 ranges@1.12 addresses@1.12 getRangeAreasBySheet()@1.12 getRangeAreasOrNullObjectBySheet()@1.12",
  RangeView:
    "rows@1.3 cellAddresses@1.3 columnCount@1.3 formulas@1.3 formulasLocal@1.3 formulasR1C1@1.3 index@1.3 numberFormat@1.3 rowCount@1.3 text@1.3 valueTypes@1.3 values@1.3 valuesAsJson@1.16 valuesAsJsonLocal@1.16 getRange()@1.3",
  RangeViewCollection: "items@ getCount()@1.4 getItemAt()@1.3",
  SettingCollection: "items@ add()@1.4 getCount()@1.4 getItem()@1.4 getItemOrNullObject()@1.4 onSettingsChanged@1.4",
  Setting: "key@1.4 value@1.4 delete()@1.4",
  NamedItemCollection: "items@ add()@1.4 addFormulaLocal()@1.4 getCount()@1.4 getItem()@1.1 getItemOrNullObject()@1.4",
  NamedItem:
    "arrayValues@1.7 worksheet@1.4 worksheetOrNullObject@1.4 comment@1.4 formula@1.7 name@1.1 scope@1.4 type@1.1 value@1.1 valueAsJson@1.16 valueAsJsonLocal@1.16 visible@1.1 delete()@1.4 getRange()@1.1 getRangeOrNullObject()@1.4",
  NamedItemArrayValues: "types@1.7 values@1.7 valuesAsJson@1.16 valuesAsJsonLocal@1.16",
  Binding:
    "id@1.1 type@1.1 delete()@1.3 getRange()@1.1 getTable()@1.1 getText()@1.1 onDataChanged@1.2 onSelectionChanged@1.2",
  BindingCollection:
    "items@ count@1.1 add()@1.3 addFromNamedItem()@1.3 addFromSelection()@1.3 getCount()@1.4 getItem()@1.1 getItemAt()@1.1 getItemOrNullObject()@1.4",
  TableCollection:
    "items@ count@1.1 add()@1.1 getCount()@1.4 getItem()@1.1 getItemAt()@1.1 getItemOrNullObject()@1.4 onAdded@1.9 onChanged@1.7 onDeleted@1.9",
  TableScopedCollection: "items@ getCount()@1.9 getFirst()@1.9 getItem()@1.9 getItemOrNullObject()@1.14",
  Table:
    "autoFilter@1.9 columns@1.1 rows@1.1 sort@1.2 worksheet@1.2 highlightFirstColumn@1.3 highlightLastColumn@1.3 id@1.1 legacyId@1.8 name@1.1 showBandedColumns@1.3 showBandedRows@1.3 showFilterButton@1.3 showHeaders@1.1 showTotals@1.1 style@1.1 clearFilters()@1.2 convertToRange()@1.2 delete()@1.1 getDataBodyRange()@1.1 getHeaderRowRange()@1.1 getRange()@1.1 getTotalRowRange()@1.1 reapplyFilters()@1.2 resize()@1.13 onChanged@1.7 onSelectionChanged@1.7",
  TableColumnCollection:
    "items@ count@1.1 add()@1.1 addAsJson()@1.16 getCount()@1.4 getItem()@1.1 getItemAt()@1.1 getItemOrNullObject()@1.4",
  TableColumn:
    "filter@1.2 id@1.1 index@1.1 name@1.1 values@1.1 valuesAsJson@1.16 valuesAsJsonLocal@1.16 delete()@1.1 getDataBodyRange()@1.1 getHeaderRowRange()@1.1 getRange()@1.1 getTotalRowRange()@1.1",
  TableRowCollection:
    "items@ count@1.1 add()@1.1 addAsJson()@1.16 deleteRows()@ExcelApiOnline/1.1 deleteRowsAt()@ExcelApiOnline/1.1 getCount()@1.4 getItemAt()@1.1",
  TableRow: "index@1.1 values@1.1 valuesAsJson@1.16 valuesAsJsonLocal@1.16 delete()@1.1 getRange()@1.1",
  DataValidation:
    "errorAlert@1.8 ignoreBlanks@1.8 prompt@1.8 rule@1.8 type@1.8 valid@1.8 clear()@1.8 getInvalidCells()@1.9 getInvalidCellsOrNullObject()@1.9",
  RemoveDuplicatesResult: "removed@1.9 uniqueRemaining@1.9",
  RangeFormat:
    "borders@1.1 fill@1.1 font@1.1 protection@1.2 autoIndent@1.9 columnWidth@1.2 horizontalAlignment@1.1 indentLevel@1.9 readingOrder@1.9 rowHeight@1.2 shrinkToFit@1.9 textOrientation@1.7 useStandardHeight@1.7 useStandardWidth@1.7 verticalAlignment@1.1 wrapText@1.1 adjustIndent()@1.11 autofitColumns()@1.2 autofitRows()@1.2",
  FormatProtection: "formulaHidden@1.2 locked@1.2",
  RangeFill: "color@1.1 pattern@1.9 patternColor@1.9 patternTintAndShade@1.9 tintAndShade@1.9 clear()@1.1",
  RangeBorder: "color@1.1 sideIndex@1.1 style@1.1 tintAndShade@1.9 weight@1.1",
  RangeBorderCollection: "items@ count@1.1 tintAndShade@1.9 getItem()@1.1 getItemAt()@1.1",
  RangeFont:
    "bold@1.1 color@1.1 italic@1.1 name@1.1 size@1.1 strikethrough@1.9 subscript@1.9 superscript@1.9 tintAndShade@1.9 underline@1.1",
  ChartCollection:
    "items@ count@1.1 add()@1.1 getCount()@1.4 getItem()@1.1 getItemAt()@1.1 getItemOrNullObject()@1.4 onActivated@1.8 onAdded@1.8 onDeactivated@1.8 onDeleted@1.8",
  Chart:
    "axes@1.1 dataLabels@1.1 format@1.1 legend@1.1 pivotOptions@1.9 plotArea@1.8 series@1.1 title@1.1 worksheet@1.2 categoryLabelLevel@1.8 chartType@1.7 displayBlanksAs@1.8 height@1.1 id@1.7 left@1.1 name@1.1 plotBy@1.8 plotVisibleOnly@1.8 seriesNameLevel@1.8 showAllFieldButtons@1.7 showDataLabelsOverMaximum@1.8 style@1.8 top@1.1 width@1.1 activate()@1.9 delete()@1.1 getDataTable()@1.14 getDataTableOrNullObject()@1.14 getImage()@1.2 setData()@1.1 setPosition()@1.1 onActivated@1.8 onDeactivated@1.8",
  ChartPivotOptions:
    "showAxisFieldButtons@1.9 showLegendFieldButtons@1.9 showReportFilterFieldButtons@1.9 showValueFieldButtons@1.9",
  ChartAreaFormat: "border@1.7 fill@1.1 font@1.1 colorScheme@1.9 roundedCorners@1.9",
  ChartSeriesCollection: "items@ count@1.1 add()@1.7 getCount()@1.4 getItemAt()@1.1",
  ChartSeries:
    "binOptions@1.9 boxwhiskerOptions@1.9 dataLabels@1.8 format@1.1 mapOptions@1.9 points@1.1 trendlines@1.7 xErrorBars@1.9 yErrorBars@1.9 axisGroup@1.8 bubbleScale@1.9 chartType@1.7 doughnutHoleSize@1.7 explosion@1.8 filtered@1.7 firstSliceAngle@1.8 gapWidth@1.7 gradientMaximumColor@1.9 gradientMaximumType@1.9 gradientMaximumValue@1.9 gradientMidpointColor@1.9 gradientMidpointType@1.9 gradientMidpointValue@1.9 gradientMinimumColor@1.9 gradientMinimumType@1.9 gradientMinimumValue@1.9 gradientStyle@1.9 hasDataLabels@1.7 invertColor@1.9 invertIfNegative@1.8 markerBackgroundColor@1.7 markerForegroundColor@1.7 markerSize@1.7 markerStyle@1.7 name@1.1 overlap@1.8 parentLabelStrategy@1.9 plotOrder@1.7 secondPlotSize@1.8 showConnectorLines@1.9 showLeaderLines@1.9 showShadow@1.7 smooth@1.7 splitType@1.8 splitValue@1.9 varyByCategories@1.8 delete()@1.7 getDimensionDataSourceString()@1.15 getDimensionDataSourceType()@1.15 getDimensionValues()@1.12 setBubbleSizes()@1.7 setValues()@1.7 setXAxisValues()@1.7",
  ChartSeriesFormat: "fill@1.1 line@1.1",
  ChartPointsCollection: "items@ count@1.1 getCount()@1.4 getItemAt()@1.1",
  ChartPoint:
    "dataLabel@1.7 format@1.1 hasDataLabel@1.7 markerBackgroundColor@1.7 markerForegroundColor@1.7 markerSize@1.7 markerStyle@1.7 value@1.1",
  ChartPointFormat: "border@1.7 fill@1.1",
  ChartAxes: "categoryAxis@1.1 seriesAxis@1.1 valueAxis@1.1 getItem()@1.7",
  ChartAxis:
    "format@1.1 majorGridlines@1.1 minorGridlines@1.1 title@1.1 alignment@1.8 axisGroup@1.7 baseTimeUnit@1.7 categoryType@1.7 customDisplayUnit@1.7 displayUnit@1.7 height@1.7 isBetweenCategories@1.8 left@1.7 linkNumberFormat@1.9 logBase@1.7 majorTickMark@1.7 majorTimeUnitScale@1.7 majorUnit@1.1 maximum@1.1 minimum@1.1 minorTickMark@1.7 minorTimeUnitScale@1.7 minorUnit@1.1 multiLevel@1.8 numberFormat@1.8 offset@1.8 position@1.8 positionAt@1.8 reversePlotOrder@1.7 scaleType@1.7 showDisplayUnitLabel@1.7 textOrientation@1.8 tickLabelPosition@1.7 tickLabelSpacing@1.7 tickMarkSpacing@1.7 top@1.7 type@1.7 visible@1.7 width@1.7 setCategoryNames()@1.7 setCustomDisplayUnit()@1.7 setPositionAt()@1.8",
  ChartAxisFormat: "fill@1.8 font@1.1 line@1.1",
  ChartAxisTitle: "format@1.1 text@1.1 textOrientation@1.12 visible@1.1 setFormula()@1.8",
  ChartAxisTitleFormat: "border@1.8 fill@1.8 font@1.1",
  ChartDataLabels:
    "format@1.1 leaderLines@1.19 autoText@1.8 geometricShapeType@1.19 horizontalAlignment@1.8 linkNumberFormat@1.9 numberFormat@1.8 position@1.1 separator@1.1 showAsStickyCallout@1.19 showBubbleSize@1.1 showCategoryName@1.1 showLeaderLines@1.19 showLegendKey@1.1 showPercentage@1.1 showSeriesName@1.1 showValue@1.1 textOrientation@1.8 verticalAlignment@1.8",
  ChartDataLabel:
    "format@1.8 autoText@1.8 formula@1.8 geometricShapeType@1.19 height@1.8 horizontalAlignment@1.8 left@1.8 linkNumberFormat@1.9 numberFormat@1.8 position@1.7 separator@1.7 showAsStickyCallout@1.19 showBubbleSize@1.7 showCategoryName@1.7 showLegendKey@1.7 showPercentage@1.7 showSeriesName@1.7 showValue@1.7 text@1.8 textOrientation@1.8 top@1.8 verticalAlignment@1.8 width@1.8 getSubstring()@1.19 getTailAnchor()@1.19 setHeight()@1.19 setWidth()@1.19",
  ChartDataLabelFormat: "border@1.8 fill@1.1 font@1.1",
  ChartDataLabelAnchor: "left@1.19 top@1.19",
  ChartDataTable:
    "format@1.14 showHorizontalBorder@1.14 showLegendKey@1.14 showOutlineBorder@1.14 showVerticalBorder@1.14 visible@1.14",
  ChartDataTableFormat: "border@1.14 fill@1.14 font@1.14",
  ChartErrorBars: "format@1.9 endStyleCap@1.9 include@1.9 type@1.9 visible@1.9",
  ChartErrorBarsFormat: "line@1.9",
  ChartGridlines: "format@1.1 visible@1.1",
  ChartGridlinesFormat: "line@1.1",
  ChartLegend:
    "format@1.1 legendEntries@1.7 height@1.7 left@1.7 overlay@1.1 position@1.1 showShadow@1.7 top@1.7 visible@1.1 width@1.7",
  ChartLegendEntry: "height@1.8 index@1.8 left@1.8 top@1.8 visible@1.7 width@1.8",
  ChartLegendEntryCollection: "items@ getCount()@1.7 getItemAt()@1.7",
  ChartLegendFormat: "border@1.8 fill@1.1 font@1.1",
  ChartMapOptions: "labelStrategy@1.9 level@1.9 projectionType@1.9",
  ChartTitle:
    "format@1.1 height@1.7 horizontalAlignment@1.7 left@1.7 overlay@1.1 position@1.7 showShadow@1.7 text@1.1 textOrientation@1.7 top@1.7 verticalAlignment@1.7 visible@1.1 width@1.7 getSubstring()@1.7 setFormula()@1.7",
  ChartFormatString: "font@1.7",
  ChartTitleFormat: "border@1.7 fill@1.1 font@1.1",
  ChartFill: "clear()@1.1 getSolidColor()@1.16 setSolidColor()@1.1",
  ChartBorder: "color@1.7 lineStyle@1.7 weight@1.7 clear()@1.8",
  ChartBinOptions:
    "allowOverflow@1.9 allowUnderflow@1.9 count@1.9 overflowValue@1.9 type@1.9 underflowValue@1.9 width@1.9",
  ChartBoxwhiskerOptions:
    "quartileCalculation@1.9 showInnerPoints@1.9 showMeanLine@1.9 showMeanMarker@1.9 showOutlierPoints@1.9",
  ChartLineFormat: "color@1.1 lineStyle@1.7 weight@1.7 clear()@1.1",
  ChartFont: "bold@1.1 color@1.1 italic@1.1 name@1.1 size@1.1 underline@1.1",
  ChartTrendline:
    "format@1.7 label@1.8 backwardPeriod@1.8 forwardPeriod@1.8 intercept@1.7 movingAveragePeriod@1.7 name@1.7 polynomialOrder@1.7 showEquation@1.8 showRSquared@1.8 type@1.7 delete()@1.7",
  ChartTrendlineCollection: "items@ add()@1.7 getCount()@1.7 getItem()@1.7",
  ChartTrendlineFormat: "line@1.7",
  ChartTrendlineLabel:
    "format@1.8 autoText@1.8 formula@1.8 height@1.8 horizontalAlignment@1.8 left@1.8 linkNumberFormat@1.9 numberFormat@1.8 text@1.8 textOrientation@1.8 top@1.8 verticalAlignment@1.8 width@1.8",
  ChartTrendlineLabelFormat: "border@1.8 fill@1.8 font@1.8",
  ChartPlotArea:
    "format@1.8 height@1.8 insideHeight@1.8 insideLeft@1.8 insideTop@1.8 insideWidth@1.8 left@1.8 position@1.8 top@1.8 width@1.8",
  ChartPlotAreaFormat: "border@1.8 fill@1.8",
  ChartLeaderLines: "format@1.19",
  ChartLeaderLinesFormat: "line@1.19",
  RangeSort: "apply()@1.2",
  TableSort: "fields@1.2 matchCase@1.2 method@1.2 apply()@1.2 clear()@1.2 reapply()@1.2",
  Filter:
    "criteria@1.2 apply()@1.2 applyBottomItemsFilter()@1.2 applyBottomPercentFilter()@1.2 applyCellColorFilter()@1.2 applyCustomFilter()@1.2 applyDynamicFilter()@1.2 applyFontColorFilter()@1.2 applyIconFilter()@1.2 applyTopItemsFilter()@1.2 applyTopPercentFilter()@1.2 applyValuesFilter()@1.2 clear()@1.2",
  AutoFilter:
    "criteria@1.9 enabled@1.9 isDataFiltered@1.9 apply()@1.9 clearColumnCriteria()@1.14 clearCriteria()@1.9 getRange()@1.9 getRangeOrNullObject()@1.9 reapply()@1.9 remove()@1.9",
  CultureInfo: "datetimeFormat@1.12 numberFormat@1.11 name@1.11",
  NumberFormatInfo: "currencySymbol@1.17 numberDecimalSeparator@1.11 numberGroupSeparator@1.11",
  DatetimeFormatInfo:
    "dateSeparator@1.12 longDatePattern@1.12 longTimePattern@1.12 shortDatePattern@1.12 timeSeparator@1.12",
  CustomXmlPartScopedCollection:
    "items@ getCount()@1.5 getItem()@1.5 getItemOrNullObject()@1.5 getOnlyItem()@1.5 getOnlyItemOrNullObject()@1.5",
  CustomXmlPartCollection:
    "items@ add()@1.5 getByNamespace()@1.5 getCount()@1.5 getItem()@1.5 getItemOrNullObject()@1.5",
  CustomXmlPart: "id@1.5 namespaceUri@1.5 delete()@1.5 getXml()@1.5 setXml()@1.5",
  PivotTableScopedCollection:
    "items@ getCount()@1.12 getFirst()@1.12 getFirstOrNullObject()@1.15 getItem()@1.12 getItemOrNullObject()@1.12",
  PivotTableCollection: "items@ add()@1.8 getCount()@1.4 getItem()@1.3 getItemOrNullObject()@1.4 refreshAll()@1.3",
  PivotTable:
    "columnHierarchies@1.8 dataHierarchies@1.8 filterHierarchies@1.8 hierarchies@1.8 layout@1.8 rowHierarchies@1.8 worksheet@1.3 allowMultipleFiltersPerField@1.12 enableDataValueEditing@1.9 id@1.5 name@1.3 refreshOnOpen@1.13 useCustomSortLists@1.9 delete()@1.8 getDataSourceString()@1.15 getDataSourceType()@1.15 refresh()@1.3",
  PivotLayout:
    "altTextDescription@1.13 altTextTitle@1.13 autoFormat@1.9 emptyCellText@1.13 enableFieldList@1.10 fillEmptyCells@1.13 layoutType@1.8 preserveFormatting@1.9 showColumnGrandTotals@1.8 showFieldHeaders@1.13 showRowGrandTotals@1.8 subtotalLocation@1.8 displayBlankLineAfterEachItem()@1.13 getColumnLabelRange()@1.8 getDataBodyRange()@1.8 getDataHierarchy()@1.9 getFilterAxisRange()@1.8 getPivotItems()@1.9 getRange()@1.8 getRowLabelRange()@1.8 repeatAllItemLabels()@1.13 setAutoSortOnCell()@1.9",
  PivotHierarchyCollection: "items@ getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8",
  PivotHierarchy: "fields@1.8 id@1.8 name@1.8",
  RowColumnPivotHierarchyCollection:
    "items@ add()@1.8 getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8 remove()@1.8",
  RowColumnPivotHierarchy: "fields@1.8 id@1.8 name@1.8 position@1.8 setToDefault()@1.8",
  FilterPivotHierarchyCollection:
    "items@ add()@1.8 getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8 remove()@1.8",
  FilterPivotHierarchy: "fields@1.8 enableMultipleFilterItems@1.8 id@1.8 name@1.8 position@1.8 setToDefault()@1.8",
  DataPivotHierarchyCollection: "items@ add()@1.8 getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8 remove()@1.8",
  DataPivotHierarchy:
    "field@1.8 id@1.8 name@1.8 numberFormat@1.8 position@1.8 showAs@1.8 summarizeBy@1.8 setToDefault()@1.8",
  PivotFieldCollection: "items@ getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8",
  PivotField:
    "items@1.8 id@1.8 name@1.8 showAllItems@1.8 subtotals@1.8 applyFilter()@1.12 clearAllFilters()@1.12 clearFilter()@1.12 getFilters()@1.12 isFiltered()@1.12 sortByLabels()@1.8 sortByValues()@1.9",
  PivotItemCollection: "items@ getCount()@1.8 getItem()@1.8 getItemOrNullObject()@1.8",
  PivotItem: "id@1.8 isExpanded@1.8 name@1.8 visible@1.8",
  WorksheetCustomProperty: "key@1.12 value@1.12 delete()@1.12",
  WorksheetCustomPropertyCollection: "items@ add()@1.12 getCount()@1.12 getItem()@1.12 getItemOrNullObject()@1.12",
  DocumentProperties:
    "custom@1.7 author@1.7 category@1.7 comments@1.7 company@1.7 creationDate@1.7 keywords@1.7 lastAuthor@1.7 manager@1.7 revisionNumber@1.7 subject@1.7 title@1.7",
  CustomProperty: "key@1.7 type@1.7 value@1.7 delete()@1.7",
  CustomPropertyCollection: "items@ add()@1.7 deleteAll()@1.7 getCount()@1.7 getItem()@1.7 getItemOrNullObject()@1.7",
  ConditionalFormatCollection:
    "items@ add()@1.6 clearAll()@1.6 getCount()@1.6 getItem()@1.6 getItemAt()@1.6 getItemOrNullObject()@1.14",
  ConditionalFormat:
    "cellValue@1.6 cellValueOrNullObject@1.6 colorScale@1.6 colorScaleOrNullObject@1.6 custom@1.6 customOrNullObject@1.6 dataBar@1.6 dataBarOrNullObject@1.6 iconSet@1.6 iconSetOrNullObject@1.6 preset@1.6 presetOrNullObject@1.6 textComparison@1.6 textComparisonOrNullObject@1.6 topBottom@1.6 topBottomOrNullObject@1.6 id@1.6 priority@1.6 stopIfTrue@1.6 type@1.6 changeRuleToCellValue()@1.17 changeRuleToColorScale()@1.17 changeRuleToContainsText()@1.17 changeRuleToCustom()@1.17 changeRuleToDataBar()@1.17 changeRuleToIconSet()@1.17 changeRuleToPresetCriteria()@1.17 changeRuleToTopBottom()@1.17 delete()@1.6 getRange()@1.6 getRangeOrNullObject()@1.6 getRanges()@1.9 setRanges()@1.17",
  DataBarConditionalFormat:
    "negativeFormat@1.6 positiveFormat@1.6 axisColor@1.6 axisFormat@1.6 barDirection@1.6 lowerBoundRule@1.6 showDataBarOnly@1.6 upperBoundRule@1.6",
  ConditionalDataBarPositiveFormat: "borderColor@1.6 fillColor@1.6 gradientFill@1.6",
  ConditionalDataBarNegativeFormat:
    "borderColor@1.6 fillColor@1.6 matchPositiveBorderColor@1.6 matchPositiveFillColor@1.6",
  CustomConditionalFormat: "format@1.6 rule@1.6",
  ConditionalFormatRule: "formula@1.6 formulaLocal@1.6 formulaR1C1@1.6",
  IconSetConditionalFormat: "criteria@1.6 reverseIconOrder@1.6 showIconOnly@1.6 style@1.6",
  ColorScaleConditionalFormat: "criteria@1.6 threeColorScale@1.6",
  TopBottomConditionalFormat: "format@1.6 rule@1.6",
  PresetCriteriaConditionalFormat: "format@1.6 rule@1.6",
  TextConditionalFormat: "format@1.6 rule@1.6",
  CellValueConditionalFormat: "format@1.6 rule@1.6",
  ConditionalRangeFormat: "borders@1.6 fill@1.6 font@1.6 numberFormat@1.6 clearFormat()@1.17",
  ConditionalRangeFont: "bold@1.6 color@1.6 italic@1.6 strikethrough@1.6 underline@1.6 clear()@1.6",
  ConditionalRangeFill: "color@1.6 clear()@1.6",
  ConditionalRangeBorder: "color@1.6 sideIndex@1.6 style@1.6",
  ConditionalRangeBorderCollection:
    "bottom@1.6 left@1.6 right@1.6 top@1.6 items@ count@1.6 getItem()@1.6 getItemAt()@1.6",
  CustomFunctionManager: "setVisibility()@1.20 newObject()@1.20",
  Style:
    "borders@1.7 fill@1.7 font@1.7 autoIndent@1.8 builtIn@1.7 formulaHidden@1.7 horizontalAlignment@1.7 includeAlignment@1.7 includeBorder@1.7 includeFont@1.7 includeNumber@1.7 includePatterns@1.7 includeProtection@1.7 indentLevel@1.7 locked@1.7 name@1.7 numberFormat@1.7 numberFormatLocal@1.7 readingOrder@1.7 shrinkToFit@1.7 textOrientation@1.8 verticalAlignment@1.7 wrapText@1.7 delete()@1.7",
  StyleCollection: "items@ add()@1.7 getCount()@1.9 getItem()@1.7 getItemAt()@1.9 getItemOrNullObject()@1.14",
  TableStyleCollection:
    "items@ add()@1.10 getCount()@1.10 getDefault()@1.10 getItem()@1.10 getItemOrNullObject()@1.10 setDefault()@1.10",
  TableStyle: "name@1.10 readOnly@1.10 delete()@1.10 duplicate()@1.10",
  PivotTableStyleCollection:
    "items@ add()@1.10 getCount()@1.10 getDefault()@1.10 getItem()@1.10 getItemOrNullObject()@1.10 setDefault()@1.10",
  PivotTableStyle: "name@1.10 readOnly@1.10 delete()@1.10 duplicate()@1.10",
  SlicerStyleCollection:
    "items@ add()@1.10 getCount()@1.10 getDefault()@1.10 getItem()@1.10 getItemOrNullObject()@1.10 setDefault()@1.10",
  SlicerStyle: "name@1.10 readOnly@1.10 delete()@1.10 duplicate()@1.10",
  TimelineStyleCollection:
    "items@ add()@1.10 getCount()@1.10 getDefault()@1.10 getItem()@1.10 getItemOrNullObject()@1.10 setDefault()@1.10",
  TimelineStyle: "name@1.10 readOnly@1.10 delete()@1.10 duplicate()@1.10",
  PageLayout:
    "headersFooters@1.9 alignMarginsHeaderFooter@ExcelApiDesktop/1.1 blackAndWhite@1.9 bottomMargin@1.9 centerHorizontally@1.9 centerVertically@1.9 draftMode@1.9 firstPageNumber@1.9 footerMargin@1.9 headerMargin@1.9 leftMargin@1.9 orientation@1.9 paperSize@1.9 printComments@1.9 printErrors@1.9 printGridlines@1.9 printHeadings@1.9 printOrder@1.9 printQuality@ExcelApiDesktop/1.1 rightMargin@1.9 topMargin@1.9 zoom@1.9 getPrintArea()@1.9 getPrintAreaOrNullObject()@1.9 getPrintTitleColumns()@1.9 getPrintTitleColumnsOrNullObject()@1.9 getPrintTitleRows()@1.9 getPrintTitleRowsOrNullObject()@1.9 setPrintArea()@1.9 setPrintMargins()@1.9 setPrintTitleColumns()@1.9 setPrintTitleRows()@1.9",
  HeaderFooter:
    "centerFooterPicture@ExcelApiDesktop/1.1 centerHeaderPicture@ExcelApiDesktop/1.1 leftFooterPicture@ExcelApiDesktop/1.1 leftHeaderPicture@ExcelApiDesktop/1.1 rightFooterPicture@ExcelApiDesktop/1.1 rightHeaderPicture@ExcelApiDesktop/1.1 centerFooter@1.9 centerHeader@1.9 leftFooter@1.9 leftHeader@1.9 rightFooter@1.9 rightHeader@1.9",
  HeaderFooterGroup:
    "defaultForAllPages@1.9 evenPages@1.9 firstPage@1.9 oddPages@1.9 state@1.9 useSheetMargins@1.9 useSheetScale@1.9",
  HeaderFooterPicture:
    "brightness@ExcelApiDesktop/1.1 colorType@ExcelApiDesktop/1.1 contrast@ExcelApiDesktop/1.1 cropBottom@ExcelApiDesktop/1.1 cropLeft@ExcelApiDesktop/1.1 cropRight@ExcelApiDesktop/1.1 cropTop@ExcelApiDesktop/1.1 filename@ExcelApiDesktop/1.1 height@ExcelApiDesktop/1.1 lockAspectRatio@ExcelApiDesktop/1.1 width@ExcelApiDesktop/1.1",
  PageBreak: "columnIndex@1.9 rowIndex@1.9 delete()@1.9 getCellAfterBreak()@1.9",
  PageBreakCollection: "items@ add()@1.9 getCount()@1.9 getItem()@1.9 removePageBreaks()@1.9",
  DataConnectionCollection: "refreshAll()@1.7",
  RangeCollection: "items@ getCount()@1.9 getItemAt()@1.9",
  RangeAreasCollection: "items@ getCount()@1.12 getItemAt()@1.12",
  CommentCollection:
    "items@ add()@1.10 getCount()@1.10 getItem()@1.10 getItemAt()@1.10 getItemByCell()@1.10 getItemByReplyId()@1.10 getItemOrNullObject()@1.14 onAdded@1.12 onChanged@1.12 onDeleted@1.12",
  Comment:
    "replies@1.10 authorEmail@1.10 authorName@1.10 content@1.10 contentType@1.12 creationDate@1.10 id@1.10 mentions@1.11 resolved@1.11 richContent@1.11 delete()@1.10 getLocation()@1.10 updateMentions()@1.11",
  CommentReplyCollection:
    "items@ add()@1.10 getCount()@1.10 getItem()@1.10 getItemAt()@1.10 getItemOrNullObject()@1.14",
  CommentReply:
    "authorEmail@1.10 authorName@1.10 content@1.10 contentType@1.12 creationDate@1.10 id@1.10 mentions@1.11 resolved@1.11 richContent@1.11 delete()@1.10 getLocation()@1.10 getParentComment()@1.10 updateMentions()@1.11",
  ShapeCollection:
    "items@ addGeometricShape()@1.9 addGroup()@1.9 addImage()@1.9 addLine()@1.9 addTextBox()@1.9 getCount()@1.9 getItem()@1.9 getItemAt()@1.9 getItemOrNullObject()@1.14",
  Shape:
    "fill@1.9 geometricShape@1.9 group@1.9 image@1.9 line@1.9 lineFormat@1.9 parentGroup@1.9 textFrame@1.9 altTextDescription@1.9 altTextTitle@1.9 connectionSiteCount@1.9 displayName@1.15 geometricShapeType@1.9 height@1.9 id@1.9 left@1.9 level@1.9 lockAspectRatio@1.9 name@1.9 placement@1.10 rotation@1.9 top@1.9 type@1.9 visible@1.9 width@1.9 zOrderPosition@1.9 copyTo()@1.10 delete()@1.9 getAsImage()@1.9 incrementLeft()@1.9 incrementRotation()@1.9 incrementTop()@1.9 scaleHeight()@1.9 scaleWidth()@1.9 setZOrder()@1.9 onActivated@1.9 onDeactivated@1.9",
  GeometricShape: "shape@1.9 id@1.9",
  Image:
    "shape@1.9 brightness@ExcelApiDesktop/1.1 colorType@ExcelApiDesktop/1.1 contrast@ExcelApiDesktop/1.1 cropBottom@ExcelApiDesktop/1.1 cropLeft@ExcelApiDesktop/1.1 cropRight@ExcelApiDesktop/1.1 cropTop@ExcelApiDesktop/1.1 id@1.9 format@1.9 incrementBrightness()@ExcelApiDesktop/1.1 incrementContrast()@ExcelApiDesktop/1.1",
  ShapeGroup: "shape@1.9 shapes@1.9 id@1.9 ungroup()@1.9",
  GroupShapeCollection: "items@ getCount()@1.9 getItem()@1.9 getItemAt()@1.9 getItemOrNullObject()@1.14",
  Line: "beginConnectedShape@1.9 endConnectedShape@1.9 shape@1.9 beginArrowheadLength@1.9 beginArrowheadStyle@1.9 beginArrowheadWidth@1.9 beginConnectedSite@1.9 endArrowheadLength@1.9 endArrowheadStyle@1.9 endArrowheadWidth@1.9 endConnectedSite@1.9 id@1.9 isBeginConnected@1.9 isEndConnected@1.9 connectorType@1.9 connectBeginShape()@1.9 connectEndShape()@1.9 disconnectBeginShape()@1.9 disconnectEndShape()@1.9",
  ShapeFill: "foregroundColor@1.9 transparency@1.9 type@1.9 clear()@1.9 setSolidColor()@1.9",
  ShapeLineFormat: "color@1.9 dashStyle@1.9 style@1.9 transparency@1.9 visible@1.9 weight@1.9",
  TextFrame:
    "textRange@1.9 autoSizeSetting@1.9 bottomMargin@1.9 hasText@1.9 horizontalAlignment@1.9 horizontalOverflow@1.9 leftMargin@1.9 orientation@1.9 readingOrder@1.9 rightMargin@1.9 topMargin@1.9 verticalAlignment@1.9 verticalOverflow@1.9 deleteText()@1.9",
  TextRange: "font@1.9 text@1.9 getSubstring()@1.9",
  ShapeFont: "bold@1.9 color@1.9 italic@1.9 name@1.9 size@1.9 underline@1.9",
  Slicer:
    "slicerItems@1.10 worksheet@1.10 caption@1.10 height@1.10 id@1.10 isFilterCleared@1.10 left@1.10 name@1.10 sortBy@1.10 style@1.10 top@1.10 width@1.10 clearFilters()@1.10 delete()@1.10 getSelectedItems()@1.10 selectItems()@1.10",
  SlicerCollection: "items@ add()@1.10 getCount()@1.10 getItem()@1.10 getItemAt()@1.10 getItemOrNullObject()@1.10",
  SlicerItem: "hasData@1.10 isSelected@1.10 key@1.10 name@1.10",
  SlicerItemCollection: "items@ getCount()@1.10 getItem()@1.10 getItemAt()@1.10 getItemOrNullObject()@1.10",
  LinkedEntityDataDomain:
    "dataProvider@1.19 id@1.19 lastRefreshed@1.19 loadFunctionId@1.19 name@1.19 periodicRefreshInterval@1.19 refreshMode@1.19 serviceId@1.19 supportedRefreshModes@1.19 delete()@1.19 refresh()@1.19",
  LinkedEntityDataDomainCollection:
    "items@ add()@1.19 getCount()@1.19 getItem()@1.19 getItemAt()@1.19 getItemByName()@1.19 getItemByNameOrNullObject()@1.19 getItemOrNullObject()@1.19 loadLinkedEntityCellValue()@1.21 refreshAll()@1.19 onLinkedEntityCellValueLoaded@1.21 onLinkedEntityDataDomainAdded@1.19 onRefreshCompleted@1.19 onRefreshModeChanged@1.19",
  NamedSheetView:
    "name@ExcelApiOnline/1.1 activate()@ExcelApiOnline/1.1 delete()@ExcelApiOnline/1.1 duplicate()@ExcelApiOnline/1.1",
  NamedSheetViewCollection:
    "items@ add()@ExcelApiOnline/1.1 enterTemporary()@ExcelApiOnline/1.1 exit()@ExcelApiOnline/1.1 getActive()@ExcelApiOnline/1.1 getCount()@ExcelApiOnline/1.1 getItem()@ExcelApiOnline/1.1 getItemAt()@ExcelApiOnline/1.1",
  NoteCollection: "items@ add()@1.18 getCount()@1.18 getItem()@1.18 getItemAt()@1.18 getItemOrNullObject()@1.18",
  Note: "authorName@1.18 content@1.18 height@1.18 visible@1.18 width@1.18 delete()@1.18 getLocation()@1.18",
  Window:
    "activeCell@ExcelApiDesktop/1.1 activePane@ExcelApiDesktop/1.1 activeWorksheet@ExcelApiDesktop/1.1 panes@ExcelApiDesktop/1.1 visibleRange@ExcelApiDesktop/1.1 autoFilterDateGroupingEnabled@ExcelApiDesktop/1.1 enableResize@ExcelApiDesktop/1.1 freezePanes@ExcelApiDesktop/1.1 height@ExcelApiDesktop/1.1 index@ExcelApiDesktop/1.1 isVisible@ExcelApiDesktop/1.1 left@ExcelApiDesktop/1.1 name@ExcelApiDesktop/1.1 scrollColumn@ExcelApiDesktop/1.1 scrollRow@ExcelApiDesktop/1.1 showFormulas@ExcelApiDesktop/1.1 showGridlines@ExcelApiDesktop/1.1 showHeadings@ExcelApiDesktop/1.1 showHorizontalScrollBar@ExcelApiDesktop/1.1 showOutline@ExcelApiDesktop/1.1 showRightToLeft@ExcelApiDesktop/1.1 showRuler@ExcelApiDesktop/1.1 showVerticalScrollBar@ExcelApiDesktop/1.1 showWhitespace@ExcelApiDesktop/1.1 showWorkbookTabs@ExcelApiDesktop/1.1 showZeros@ExcelApiDesktop/1.1 split@ExcelApiDesktop/1.1 splitColumn@ExcelApiDesktop/1.1 splitHorizontal@ExcelApiDesktop/1.1 splitRow@ExcelApiDesktop/1.1 splitVertical@ExcelApiDesktop/1.1 tabRatio@ExcelApiDesktop/1.1 top@ExcelApiDesktop/1.1 type@ExcelApiDesktop/1.1 usableHeight@ExcelApiDesktop/1.1 usableWidth@ExcelApiDesktop/1.1 view@ExcelApiDesktop/1.1 width@ExcelApiDesktop/1.1 windowNumber@ExcelApiDesktop/1.1 windowState@ExcelApiDesktop/1.1 zoom@ExcelApiDesktop/1.1 activate()@ExcelApiDesktop/1.1 activateNext()@ExcelApiDesktop/1.1 activatePrevious()@ExcelApiDesktop/1.1 close()@ExcelApiDesktop/1.1 largeScroll()@ExcelApiDesktop/1.1 newWindow()@ExcelApiDesktop/1.1 pointsToScreenPixelsX()@ExcelApiDesktop/1.1 pointsToScreenPixelsY()@ExcelApiDesktop/1.1 scrollIntoView()@ExcelApiDesktop/1.1 scrollWorkbookTabs()@ExcelApiDesktop/1.1 smallScroll()@ExcelApiDesktop/1.1",
  WindowCollection:
    "items@ breakSideBySide()@ExcelApiDesktop/1.1 compareCurrentSideBySideWith()@ExcelApiDesktop/1.1 getCount()@ExcelApiDesktop/1.1 getItemAt()@ExcelApiDesktop/1.1 resetPositionsSideBySide()@ExcelApiDesktop/1.1",
  Pane: "index@ExcelApiDesktop/1.1",
  PaneCollection: "items@ getCount()@ExcelApiDesktop/1.1 getItemAt()@ExcelApiDesktop/1.1",
  FunctionResult: "error@1.2 value@1.2",
  Functions:
    "abs()@1.2 accrInt()@1.2 accrIntM()@1.2 acos()@1.2 acosh()@1.2 acot()@1.2 acoth()@1.2 amorDegrc()@1.2 amorLinc()@1.2 and()@1.2 arabic()@1.2 areas()@1.2 asc()@1.2 asin()@1.2 asinh()@1.2 atan()@1.2 atan2()@1.2 atanh()@1.2 aveDev()@1.2 average()@1.2 averageA()@1.2 averageIf()@1.2 averageIfs()@1.2 bahtText()@1.2 base()@1.2 besselI()@1.2 besselJ()@1.2 besselK()@1.2 besselY()@1.2 beta_Dist()@1.2 beta_Inv()@1.2 bin2Dec()@1.2 bin2Hex()@1.2 bin2Oct()@1.2 binom_Dist()@1.2 binom_Dist_Range()@1.2 binom_Inv()@1.2 bitand()@1.2 bitlshift()@1.2 bitor()@1.2 bitrshift()@1.2 bitxor()@1.2 ceiling_Math()@1.2 ceiling_Precise()@1.2 char()@1.2 chiSq_Dist()@1.2 chiSq_Dist_RT()@1.2 chiSq_Inv()@1.2 chiSq_Inv_RT()@1.2 choose()@1.2 clean()@1.2 code()@1.2 columns()@1.2 combin()@1.2 combina()@1.2 complex()@1.2 concatenate()@1.2 confidence_Norm()@1.2 confidence_T()@1.2 convert()@1.2 cos()@1.2 cosh()@1.2 cot()@1.2 coth()@1.2 count()@1.2 countA()@1.2 countBlank()@1.2 countIf()@1.2 countIfs()@1.2 coupDayBs()@1.2 coupDays()@1.2 coupDaysNc()@1.2 coupNcd()@1.2 coupNum()@1.2 coupPcd()@1.2 csc()@1.2 csch()@1.2 cumIPmt()@1.2 cumPrinc()@1.2 daverage()@1.2 dcount()@1.2 dcountA()@1.2 dget()@1.2 dmax()@1.2 dmin()@1.2 dproduct()@1.2 dstDev()@1.2 dstDevP()@1.2 dsum()@1.2 dvar()@1.2 dvarP()@1.2 date()@1.2 datevalue()@1.2 day()@1.2 days()@1.2 days360()@1.2 db()@1.2 dbcs()@1.2 ddb()@1.2 dec2Bin()@1.2 dec2Hex()@1.2 dec2Oct()@1.2 decimal()@1.2 degrees()@1.2 delta()@1.2 devSq()@1.2 disc()@1.2 dollar()@1.2 dollarDe()@1.2 dollarFr()@1.2 duration()@1.2 ecma_Ceiling()@1.2 edate()@1.2 effect()@1.2 eoMonth()@1.2 erf()@1.2 erfC()@1.2 erfC_Precise()@1.2 erf_Precise()@1.2 error_Type()@1.2 even()@1.2 exact()@1.2 exp()@1.2 expon_Dist()@1.2 fvschedule()@1.2 f_Dist()@1.2 f_Dist_RT()@1.2 f_Inv()@1.2 f_Inv_RT()@1.2 fact()@1.2 factDouble()@1.2 false()@1.2 find()@1.2 findB()@1.2 fisher()@1.2 fisherInv()@1.2 fixed()@1.2 floor_Math()@1.2 floor_Precise()@1.2 fv()@1.2 gamma()@1.2 gammaLn()@1.2 gammaLn_Precise()@1.2 gamma_Dist()@1.2 gamma_Inv()@1.2 gauss()@1.2 gcd()@1.2 geStep()@1.2 geoMean()@1.2 hlookup()@1.2 harMean()@1.2 hex2Bin()@1.2 hex2Dec()@1.2 hex2Oct()@1.2 hour()@1.2 hypGeom_Dist()@1.2 hyperlink()@1.2 iso_Ceiling()@1.2 if()@1.2 imAbs()@1.2 imArgument()@1.2 imConjugate()@1.2 imCos()@1.2 imCosh()@1.2 imCot()@1.2 imCsc()@1.2 imCsch()@1.2 imDiv()@1.2 imExp()@1.2 imLn()@1.2 imLog10()@1.2 imLog2()@1.2 imPower()@1.2 imProduct()@1.2 imReal()@1.2 imSec()@1.2 imSech()@1.2 imSin()@1.2 imSinh()@1.2 imSqrt()@1.2 imSub()@1.2 imSum()@1.2 imTan()@1.2 imaginary()@1.2 int()@1.2 intRate()@1.2 ipmt()@1.2 irr()@1.2 isErr()@1.2 isError()@1.2 isEven()@1.2 isFormula()@1.2 isLogical()@1.2 isNA()@1.2 isNonText()@1.2 isNumber()@1.2 isOdd()@1.2 isText()@1.2 isoWeekNum()@1.2 ispmt()@1.2 isref()@1.2 kurt()@1.2 large()@1.2 lcm()@1.2 left()@1.2 leftb()@1.2 len()@1.2 lenb()@1.2 ln()@1.2 log()@1.2 log10()@1.2 logNorm_Dist()@1.2 logNorm_Inv()@1.2 lookup()@1.2 lower()@1.2 mduration()@1.2 mirr()@1.2 mround()@1.2 match()@1.2 max()@1.2 maxA()@1.2 median()@1.2 mid()@1.2 midb()@1.2 min()@1.2 minA()@1.2 minute()@1.2 mod()@1.2 month()@1.2 multiNomial()@1.2 n()@1.2 nper()@1.2 na()@1.2 negBinom_Dist()@1.2 networkDays()@1.2 networkDays_Intl()@1.2 nominal()@1.2 norm_Dist()@1.2 norm_Inv()@1.2 norm_S_Dist()@1.2 norm_S_Inv()@1.2 not()@1.2 now()@1.2 npv()@1.2 numberValue()@1.2 oct2Bin()@1.2 oct2Dec()@1.2 oct2Hex()@1.2 odd()@1.2 oddFPrice()@1.2 oddFYield()@1.2 oddLPrice()@1.2 oddLYield()@1.2 or()@1.2 pduration()@1.2 percentRank_Exc()@1.2 percentRank_Inc()@1.2 percentile_Exc()@1.2 percentile_Inc()@1.2 permut()@1.2 permutationa()@1.2 phi()@1.2 pi()@1.2 pmt()@1.2 poisson_Dist()@1.2 power()@1.2 ppmt()@1.2 price()@1.2 priceDisc()@1.2 priceMat()@1.2 product()@1.2 proper()@1.2 pv()@1.2 quartile_Exc()@1.2 quartile_Inc()@1.2 quotient()@1.2 radians()@1.2 rand()@1.2 randBetween()@1.2 rank_Avg()@1.2 rank_Eq()@1.2 rate()@1.2 received()@1.2 replace()@1.2 replaceB()@1.2 rept()@1.2 right()@1.2 rightb()@1.2 roman()@1.2 round()@1.2 roundDown()@1.2 roundUp()@1.2 rows()@1.2 rri()@1.2 sec()@1.2 sech()@1.2 second()@1.2 seriesSum()@1.2 sheet()@1.2 sheets()@1.2 sign()@1.2 sin()@1.2 sinh()@1.2 skew()@1.2 skew_p()@1.2 sln()@1.2 small()@1.2 sqrt()@1.2 sqrtPi()@1.2 stDevA()@1.2 stDevPA()@1.2 stDev_P()@1.2 stDev_S()@1.2 standardize()@1.2 substitute()@1.2 subtotal()@1.2 sum()@1.2 sumIf()@1.2 sumIfs()@1.2 sumSq()@1.2 syd()@1.2 t()@1.2 tbillEq()@1.2 tbillPrice()@1.2 tbillYield()@1.2 t_Dist()@1.2 t_Dist_2T()@1.2 t_Dist_RT()@1.2 t_Inv()@1.2 t_Inv_2T()@1.2 tan()@1.2 tanh()@1.2 text()@1.2 time()@1.2 timevalue()@1.2 today()@1.2 trim()@1.2 trimMean()@1.2 true()@1.2 trunc()@1.2 type()@1.2 usdollar()@1.2 unichar()@1.2 unicode()@1.2 upper()@1.2 vlookup()@1.2 value()@1.2 varA()@1.2 varPA()@1.2 var_P()@1.2 var_S()@1.2 vdb()@1.2 weekNum()@1.2 weekday()@1.2 weibull_Dist()@1.2 workDay()@1.2 workDay_Intl()@1.2 xirr()@1.2 xnpv()@1.2 xor()@1.2 year()@1.2 yearFrac()@1.2 yield()@1.2 yieldDisc()@1.2 yieldMat()@1.2 z_Test()@1.2",
};
