# Headings of the pages in the folder explain, which "tallywatt explain CODE" prints.
page-checks = What it checks
page-hurts = Why it matters
page-arithmetic = The arithmetic
page-do = What to do
page-sources = Sources

## What is said of a source after the name of its document. $clause is a number or letter of it, such as
## 210.21(B)(2).

source-table = Table { $clause }
source-tables = tables { $clause }
source-tables-metric = tables { $clause }, for cords marked in mm²
source-table-note-9 = Table { $clause }, note 9
source-chapter-9-table-8 = Chapter 9 Table 8
source-class = class { $clause }
source-informational = { $clause }, informational note
source-exception = { $clause }, exception
source-class-a = article { $clause }, note on class A
source-construction-sites = { $clause }, borrowed from construction sites
source-camper-outlets = { $clause }, requires none at 30 A and 50 A camper outlets
source-floating-outlets = { $clause }, generators with a floating neutral and both 125 V and 125/250 V outlets
source-small-two-wire = { $clause }, construction sites; exempts small two-wire generators
source-cord-sets = cord sets by length, tables { $clause }
source-letter = letter of interpretation
source-extension-cords = advice on extension cords
source-generators = generator advice
source-portable-generators = portable generator advice
source-monoxide = carbon monoxide advice
source-monoxide-levels = carbon monoxide levels
source-generators-monoxide = portable generators and carbon monoxide
source-alarm-times = alarm times
source-deaths = portable generator deaths, release
source-clear-space = clear space on all sides
source-power-taps = guide information, category { $clause }, relocatable power taps
source-heaters = electric space heater tips
source-heating = heating safety advice
source-fire-hazards = generator fire hazards
source-fire-order = order { $clause }, fire restrictions
source-spark-arresters = spark arrester qualification, as US Army TM 9-6115-673-13&P cites it
source-propane = suppliers of propane, advice to customers
source-oxygen = suppliers of home oxygen, advice to patients
source-oxygen-pages = web pages on backup power for home oxygen, 300 to 600 W
source-leakage = leakage current
source-calibration = calibration
source-trip-time = trip time
source-range-a = { $clause }, as ANSI C84.1 range A
source-volts-in-use = as Pacific Gas and Electric and a revision draft give it, utilization voltage of 120 V
source-colors-and-positions = colors and ground positions
