REM  Functions for cells of LibreOffice Calc that ask the service, one figure a cell.
REM
REM  To use them: Tools, Macros, Edit Macros; under My Macros, Standard, make a module and paste this text into it.
REM  In a cell, with the address of the service in B1, the key of a loop in A4 (such as kelp-flume, or its id) and that of a pump in C4:
REM
REM    =LOOPSETTING($B$1; A4; C4)                 lowest setting at which the pump serves every outlet [%]
REM    =LOOPYEARLYENERGY($B$1; A4; C4)            energy of a year at it [kWh]
REM    =LOOPYEARLYCOST($B$1; A4; C4)              its cost, in the site's currency
REM    =LOOPOUTLETFLOW($B$1; A4; C4; "far end")   flow of an outlet at it [L/h]
REM
REM  A cell shows "no value" where the pump cannot serve the loop or has no price, and "no answer" where the service does not
REM  answer. Cells ask again when they are recalculated in full (Shift+Ctrl+F9).
Option Explicit

Const NO_VALUE = "no value"
Const NO_ANSWER = "no answer"

Function LoopSetting(service As String, loopId As String, pumpId As String) As Variant
  LoopSetting = Recommended(service, loopId, pumpId, "/best/setting")
End Function

Function LoopYearlyEnergy(service As String, loopId As String, pumpId As String) As Variant
  LoopYearlyEnergy = Recommended(service, loopId, pumpId, "/best/annualEnergy")
End Function

Function LoopYearlyCost(service As String, loopId As String, pumpId As String) As Variant
  LoopYearlyCost = Recommended(service, loopId, pumpId, "/best/annualCost")
End Function

REM  By the table of the outlets at the setting.
Function LoopOutletFlow(service As String, loopId As String, pumpId As String, outlet As String) As Variant
  Dim setting As Variant
  setting = LoopSetting(service, loopId, pumpId)
  If Not IsNumeric(setting) Then
    LoopOutletFlow = setting
    Exit Function
  End If
  Dim query As String
  query = "pump=" & pumpId & "&setting=" & Trim(Str(setting)) & "&format=csv"
  Dim table As Variant
  table = Asked(service & "/v1/loops/" & loopId & "/duty-point?" & query)
  LoopOutletFlow = NO_VALUE
  If IsNull(table) Then Exit Function
  Dim rows As Variant, cells As Variant, i As Integer, nameColumn As Integer, flowColumn As Integer
  rows = Split(table, Chr(13) & Chr(10))
  cells = CellsOf(rows(0))
  nameColumn = -1
  flowColumn = -1
  For i = 0 To UBound(cells)
    If cells(i) = "name" Then nameColumn = i
    If Left(cells(i), 6) = "flow [" Then flowColumn = i
  Next i
  If nameColumn < 0 Or flowColumn < 0 Then Exit Function
  For i = 1 To UBound(rows)
    If rows(i) <> "" Then
      cells = CellsOf(rows(i))
      If cells(nameColumn) = outlet Then LoopOutletFlow = Val(cells(flowColumn))
    End If
  Next i
End Function

Private Function Recommended(service As String, loopId As String, pumpId As String, pointer As String) As Variant
  Dim text As Variant
  text = Asked(service & "/v1/loops/" & loopId & "/recommendation?pump=" & pumpId & "&pointer=" & pointer)
  If Not IsNull(text) Then
    Recommended = Val(text)
  ElseIf IsNull(Asked(service & "/healthz")) Then
    Recommended = NO_ANSWER
  Else
    Recommended = NO_VALUE
  End If
End Function

REM  The text of an answer; Null where there is none, or where it is a problem.
Private Function Asked(address As String) As Variant
  Dim files As Object, stream As Object, bytes() As Byte, size As Long, text As String
  Asked = Null
  On Error GoTo failed
  files = createUnoService("com.sun.star.ucb.SimpleFileAccess")
  stream = createUnoService("com.sun.star.io.TextInputStream")
  stream.setInputStream(files.openFileRead(address))
  stream.setEncoding("UTF-8")
  text = stream.readString(Array(), False)
  stream.closeInput()
  Asked = text
failed:
End Function

REM  The cells of a row of CSV; a cell in quotes may hold commas, and quotes twice.
Private Function CellsOf(row As String) As Variant
  Dim cells() As String, cell As String, character As String, count As Integer, i As Long, inQuotes As Boolean
  count = 0
  For i = 1 To Len(row)
    character = Mid(row, i, 1)
    If character = """" Then
      If inQuotes And Mid(row, i + 1, 1) = """" Then
        cell = cell & character
        i = i + 1
      Else
        inQuotes = Not inQuotes
      End If
    ElseIf character = "," And Not inQuotes Then
      ReDim Preserve cells(count)
      cells(count) = cell
      count = count + 1
      cell = ""
    Else
      cell = cell & character
    End If
  Next i
  ReDim Preserve cells(count)
  cells(count) = cell
  CellsOf = cells
End Function
