-- The array: strings, converters, microinverters, conductors, grounding.
local e = require("electrical")
local pass, fail, open = e.pass, e.fail, e.open
local S1, I1 = "string:string-1", "inverter:inverter-1"
local S6000, Q405, D500 = { "inverters", "Fenwick S6000" }, { "modules", "Quillon Q405" }, { "converters", "Brae D500" }

-- A model of the catalogue with one fact changed, or blank.
local function with(model, old, new) return { model = { model[1], model[2], { { old, new } } } } end

-- Both strings on one input of an inverter that takes two.
local parallel = { { "inverter-1, input: 2", "inverter-1, input: 1" } }
local no_low = { { "design_low_temperature: {is: -12 °C, from: data sheet}", "design_low_temperature:" } }

local function box(facts)
  return { { "combiners: none", "combiners:\n  - {name: box, " .. facts .. "}" }, { "inverter: inverter-1, input: 1, ", "inverter: inverter-1, input: 1, combiner: box, " } }
end

return {
  -- 10 x 37.2 V x (1 + 0.0026 x 37 K)
  pass("nec/string-voltage", "tern", S1, "on or in a dwelling", 407.7864, 600, (600 - 407.7864) / 600),
  fail("nec/string-voltage", "tern", S1, { { "modules: [low]", "modules: [low, high]" } },
    "on or in a dwelling", 19 * 40.77864, 600, 1 - 19 * 40.77864 / 600),
  open("nec/string-voltage", "tern", S1, no_low, "design_low_temperature"),
  -- 600 V exactly: 12 modules of 50 V at 25 °C. Exactly at the limit stands; a hair above does not.
  pass("nec/string-voltage", "tern", S1, "on or in a dwelling", 600, 600, 0, {
    change = { { "at: [56.75 in", "at: [10 in" }, { "columns: 10, rows: 1", "columns: 12, rows: 1" }, { "is: -12 °C", "is: 25 °C" } },
    model = { "modules", "Quillon Q405", { { "open_circuit_voltage: 37.2 V", "open_circuit_voltage: 50 V" } } },
  }),
  fail("nec/string-voltage", "tern", S1, { { "at: [56.75 in", "at: [10 in" }, { "columns: 10, rows: 1", "columns: 12, rows: 1" }, { "is: -12 °C", "is: 25 °C" } },
    "on or in a dwelling", 600.12, 600, -0.0002, with(Q405, "open_circuit_voltage: 37.2 V", "open_circuit_voltage: 50.01 V")),

  -- 10 x 31.1 V x (1 - 0.0034 x (33 + 30 - 25) K)
  pass("nec/string-window", "tern", S1, "lower end of the window", 270.8188, 120, 150.8188 / 120),
  fail("nec/string-window", "tern", S1, nil, "lower end of the window", 270.8188, 300, -29.1812 / 300,
    with(S6000, "tracking_low: 120 V", "tracking_low: 300 V")),
  open("nec/string-window", "tern", S1, nil, "tracking_low", with(S6000, "tracking_low: 120 V", "tracking_low:")),
  -- The upper end warns only.
  fail("nec/string-window", "tern", S1, nil, "upper end of the window", 350.1238, 340, -10.1238 / 340,
    { level = "warning", model = { "inverters", "Fenwick S6000", { { "tracking_high: 500 V", "tracking_high: 340 V" } } } }),

  pass("nec/inverter-connectors", "tern", "circuit:home-1"),
  fail("nec/inverter-connectors", "tern", "circuit:home-1", { { "connector: Teal-4", "connector: Umber-3", 2 } }, "against the inverter's"),
  { rule = "nec/inverter-connectors", kind = "notApplicable", design = "tern", about = "circuit:home-1", change = { { "    connector: Teal-4\n", "", 2 } } },
  open("nec/inverter-connectors", "tern", "circuit:home-1", nil, "inverter_model Fenwick S6000: connector", with(S6000, "connector: Teal-4", "connector:")),
  pass("nec/indoor-insulation", "tern", "circuit:home-1", "Fit for inside"),
  fail("nec/indoor-insulation", "tern", "circuit:home-1", { { "insulation: THWN-2", "insulation: USE-2", 5 } }, "Fit for inside"),
  open("nec/indoor-insulation", "tern", "circuit:home-1", { { "    inside_building: yes\n", "", 2 } }, "inside_building"),
  pass("nec/circuit-ends", "tern", "circuit:home-1", "the inverter of string"),
  fail("nec/circuit-ends", "tern", "circuit:home-1", { { "from: array-1\n    to: inverter-1", "from: array-1\n    to: main" } }, "A DC circuit ends"),
  open("nec/circuit-ends", "tern", "circuit:home-1", { { "from: array-1\n    to: inverter-1\n", "from: array-1\n" } }, "to"),

  pass("nec/string-pairing", "tern", S1, "Number of its input", 1, 2, 0.5),
  fail("nec/string-pairing", "tern", S1, { { "inverter-1, input: 1", "inverter-1, input: 3" } }, "Number of its input", 3, 2, -0.5),
  open("nec/string-pairing", "tern", S1, { { "inverter-1, input: 1", "inverter-1" } }, "input"),
  fail("nec/string-pairing", "quill", S1, { { "modules: [low], has_converters: yes, converter: Brae D500,", "modules: [low], has_converters: no," } },
    "converters that its inverter needs"),
  -- Two models in one string: a warning, no more.
  fail("nec/string-pairing", "tern", S1, { { "{name: high, model: Quillon Q405", "{name: high, model: Quillon Q440" }, { "modules: [low]", "modules: [low, high]" } },
    "of one model", nil, nil, nil, { level = "warning" }),

  pass("nec/inverter-strings", "tern", I1, "Strings on input 1", 1, 1, 0),
  fail("nec/inverter-strings", "tern", I1, parallel, "Strings on input 1", 2, 1, -1),
  open("nec/inverter-strings", "tern", I1, nil, "strings_per_input", with(S6000, "strings_per_input: 1", "strings_per_input:")),

  pass("nec/module-wired", "tern", nil, "Modules in exactly one", 19, 19),
  fail("nec/module-wired", "tern", nil, { { "modules: [high]", "modules: [low]" } }, "Modules in exactly one", 0, 19),
  fail("nec/module-wired", "tern", nil, { { "modules: [high]", "modules: [low, high]" } }, "Module low-1-1 is in one"),
  open("nec/module-wired", "tern", nil, { { "modules: [high], ", "" } }, "modules"),

  pass("nec/inverter-input", "tern", I1, "Operating current into input 1", 13.03, 14, 0.97 / 14),
  fail("nec/inverter-input", "tern", I1, parallel, "Operating current into input 1", 26.06, 14, -12.06 / 14),
  open("nec/inverter-input", "tern", I1, nil, "maximum_input_current", with(S6000, "maximum_input_current: 14 A", "maximum_input_current:")),
  fail("nec/inverter-input", "tern", I1, parallel, "Short-circuit current into input 1", 27.6, 18, -9.6 / 18),

  pass("nec/converter-module", "quill", S1, "Rated power", 440, 500, 0.12),
  fail("nec/converter-module", "quill", S1, nil, "Rated power", 440, 430, -10 / 430, with(D500, "rated_input_power: 500 W", "rated_input_power: 430 W")),
  open("nec/converter-module", "quill", S1, nil, "rated_input_power", with(D500, "rated_input_power: 500 W", "rated_input_power:")),
  pass("nec/converter-string", "quill", S1, "Converters in the string", 10, 8, 0.25),
  fail("nec/converter-string", "quill", S1, { { "columns: 10, rows: 1", "columns: 7, rows: 1" } }, "Converters in the string", 7, 8, -0.125),
  open("nec/converter-string", "quill", S1, nil, "minimum_per_string", with(D500, "minimum_per_string: 8", "minimum_per_string:")),
  pass("nec/converter-listing", "quill", S1, "UL 1741"),
  fail("nec/converter-listing", "quill", S1, nil, "UL 1741", nil, nil, nil, with(D500, "listings: [UL 1741, UL 6703]", "listings: [UL 1703]")),
  open("nec/converter-listing", "quill", S1, nil, "listings", with(D500, "listings: [UL 1741, UL 6703]", "listings:")),

  pass("nec/microinverter-module", "moss", "branch:branch-1", "open-circuit voltage", 57.63476, 60, 2.36524 / 60),
  fail("nec/microinverter-module", "moss", "branch:branch-1", { { "is: -12 °C", "is: -32 °C" } }, "open-circuit voltage", 60.46436, 60, -0.46436 / 60),
  open("nec/microinverter-module", "moss", "branch:branch-1", nil, "maximum_module_power",
    with({ "inverters", "Fenwick M350" }, "maximum_module_power: 460 W", "maximum_module_power:")),
  pass("nec/microinverter-branch", "moss", "branch:branch-1", "125 % of the branch's current", 20, 18.125, 1.875 / 18.125),
  fail("nec/microinverter-branch", "moss", "branch:branch-1", { { "columns: 10, rows: 1", "columns: 12, rows: 1" }, { "microinverters: 10", "microinverters: 12" } },
    "Microinverters on the branch", 12, 11, -1 / 11),
  fail("nec/microinverter-branch", "moss", "branch:branch-1", { { "columns: 10, rows: 1", "columns: 12, rows: 1" }, { "microinverters: 10", "microinverters: 12" } },
    "125 % of the branch's current", 20, 21.75, -1.75 / 21.75),
  fail("nec/microinverter-branch", "moss", "branch:branch-1", { { "microinverters: 10", "microinverters: 9" } }, "one for each module", 9, 10),
  open("nec/microinverter-branch", "moss", "branch:branch-1", { { ", microinverters: 10", "" } }, "microinverters"),
  pass("nec/branch-ratio", "moss", "branch:branch-1", "DC power over AC power", 440 / 349, 1.4, (1.4 - 440 / 349) / 1.4),
  fail("nec/branch-ratio", "moss", "branch:branch-1", nil, "DC power over AC power", 440 / 290, 1.4, (1.4 - 440 / 290) / 1.4,
    { level = "warning", model = { "inverters", "Fenwick M350", { { "rated_power: 349 W", "rated_power: 290 W" } } } }),
  open("nec/branch-ratio", "moss", "branch:branch-1", nil, "rated_power", with({ "inverters", "Fenwick M350" }, "rated_power: 349 W", "rated_power:")),
  pass("nec/microinverter-listing", "moss", "branch:branch-1", "UL 1741"),
  fail("nec/microinverter-listing", "moss", "branch:branch-1", nil, "UL 1741", nil, nil, nil,
    with({ "inverters", "Fenwick M350" }, "listings: [UL 1741, UL 1741 SB, UL 62109, UL 6703]", "listings: [UL 62109]")),
  open("nec/microinverter-listing", "moss", "branch:branch-1", nil, "listings",
    with({ "inverters", "Fenwick M350" }, "listings: [UL 1741, UL 1741 SB, UL 62109, UL 6703]", "listings:")),
  pass("nec/branch-connectors", "moss", "branch:branch-1", "Connector of a module", "Teal-4", "Teal-4"),
  fail("nec/branch-connectors", "moss", "branch:branch-1", nil, "Connector of a module", "Teal-4", "Rill-2",
    nil, with({ "inverters", "Fenwick M350" }, "connector: Teal-4", "connector: Rill-2")),
  open("nec/branch-connectors", "moss", "branch:branch-1", nil, "connector", with({ "inverters", "Fenwick M350" }, "connector: Teal-4", "connector:")),
  pass("nec/conductor-count", "quill", "circuit:inverter-run", "those of this circuit alone", 2, 2, 0),
  fail("nec/conductor-count", "quill", "circuit:inverter-run", { { "current_carrying_conductors: 2", "current_carrying_conductors: 1" } },
    "those of this circuit alone", 1, 2, -0.5),
  open("nec/conductor-count", "quill", "circuit:inverter-run", { { "    current_carrying_conductors: 2\n", "" } }, "current_carrying_conductors"),
  pass("nec/circuit-identified", "quill", "circuit:roof-run-1", "grouped, and marked"),
  fail("nec/circuit-identified", "quill", "circuit:roof-run-1", { { "identified: yes", "identified: no", 2 } }, "grouped, and marked"),
  open("nec/circuit-identified", "quill", "circuit:roof-run-1", { { "    identified: yes\n", "", 2 } }, "identified"),
  pass("nec/string-connectors", "quill", S1, "that of its converter", "Teal-4", "Teal-4"),
  fail("nec/string-connectors", "quill", S1, nil, "that of its converter", "Teal-4", "Rill-2", nil, with(D500, "connector: Teal-4", "connector: Rill-2")),
  open("nec/string-connectors", "quill", S1, nil, "connector", with(D500, "connector: Teal-4", "connector:")),

  -- One other string: 1.25 x 13.8 A against a 25 A fuse: no device. Three: 51.75 A, and none is there.
  pass("nec/series-fuse", "tern", S1, "largest fuse", 17.25, 25, 7.75 / 25, { change = parallel }),
  fail("nec/series-fuse", "tern", S1, { { "  - {name: string-2,", "  - {name: string-3, modules: [high], has_converters: no, inverter: inverter-1, input: 1, fused: no}\n  - {name: string-4, modules: [high], has_converters: no, inverter: inverter-1, input: 1, fused: no}\n  - {name: string-2," } },
    "strings in parallel, against the module's largest fuse", 34.5, 25, -9.5 / 25),
  open("nec/series-fuse", "tern", S1, nil, "maximum_series_fuse", with(Q405, "maximum_series_fuse: 25 A", "maximum_series_fuse:")),
  -- With a fuse of 25 A: at least 1.5625 x 13.8 A = 21.5625 A, where 1.56 would say 21.528 A.
  pass("nec/series-fuse", "tern", S1, "Its rating", 25, 21.5625, 3.4375 / 21.5625, {
    change = { { "  - {name: string-2,", "  - {name: string-3, modules: [high], has_converters: no, inverter: inverter-1, input: 1, fused: no}\n  - {name: string-4, modules: [high], has_converters: no, inverter: inverter-1, input: 1, fused: no}\n  - {name: string-2," },
      { "inverter-1, input: 1, fused: no}\n  - {name: string-3", "inverter-1, input: 1, fused: yes, fuse: 25 A}\n  - {name: string-3" } },
  }),

  -- 10 AWG at 75 °C: 35 A against 1.5625 x 13.8 A.
  pass("nec/circuit-terminals", "tern", "circuit:home-1", "column of the terminals", 35, 21.5625, 13.4375 / 21.5625),
  fail("nec/circuit-terminals", "tern", "circuit:inverter-run", { { "    conductor_size: 8 AWG", "    conductor_size: 14 AWG" } }, "column of the terminals", 20, 31.25, -0.36),
  open("nec/circuit-terminals", "tern", "circuit:inverter-run", { { "    conductor_size: 8 AWG", "    conductor_size:" } }, "conductor_size"),
  -- 1.5625 against 1.56: 19.2 A of module current need 30 A; 30 A of column carry it exactly, 1.56 would leave room.
  fail("nec/circuit-terminals", "tern", "circuit:home-1", { { "    terminal_temperature: 75 °C\n    listings: none\n  - name: array-2", "    terminal_temperature: 60 °C\n    listings: none\n  - name: array-2" } },
    "column of the terminals", 30, 30.015625, -0.015625 / 30.015625, with(Q405, "short_circuit_current: 13.8 A", "short_circuit_current: 19.21 A")),
  pass("nec/circuit-terminals", "tern", "circuit:home-1", "column of the terminals", 30, 30, 0, {
    change = { { "    terminal_temperature: 75 °C\n    listings: none\n  - name: array-2", "    terminal_temperature: 60 °C\n    listings: none\n  - name: array-2" } },
    model = { "modules", "Quillon Q405", { { "short_circuit_current: 13.8 A", "short_circuit_current: 19.2 A" } } },
  }),

  -- 40 A x 0.96 at 33 °C x 0.8 for four conductors; 13/16 in above the roof is enough from 2023 on.
  pass("nec/circuit-ampacity", "tern", "circuit:home-1", "after corrections", 30.72, 17.25, 13.47 / 17.25),
  -- Below 7/8 in 33 °C come on top in 2017 and 2020: 66 °C, 0.58.
  pass("nec/circuit-ampacity", "tern", "circuit:home-1", "after corrections", 18.56, 17.25, 1.31 / 17.25, { book = "nec@2020" }),
  pass("nec/circuit-ampacity", "tern", "circuit:home-1", "after corrections", 18.56, 17.25, 1.31 / 17.25, { book = "nec@2017" }),
  fail("nec/circuit-ampacity", "tern", "circuit:home-1", { { "    current_carrying_conductors: 4\n    egc_size: 10 AWG", "    current_carrying_conductors: 12\n    egc_size: 10 AWG", 2 } },
    "after corrections", 11.6, 17.25, -5.65 / 17.25, { book = "nec@2020" }),
  open("nec/circuit-ampacity", "tern", "circuit:inverter-run", { { "    ambient_temperature: 33 °C\n    on_roof: no\n    inside_building: no\n    support_spacing: 36 in\n    in_sunlight: no\n    dc_and_ac_separated: yes\n    ocpd: fused disconnect\n    ocpd_rating: 35 A\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run", "    on_roof: no\n    inside_building: no\n    ocpd: fused disconnect\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run" } },
    "ambient_temperature"),

  pass("nec/circuit-protection", "tern", "circuit:inverter-run", "125 % of the current", 35, 31.25, 0.12),
  fail("nec/circuit-protection", "tern", "circuit:inverter-run", { { "    ocpd_rating: 35 A\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run", "    ocpd_rating: 60 A\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run" } },
    "largest that protects the conductors", 60, 50, -0.2),
  open("nec/circuit-protection", "tern", "circuit:inverter-run", { { "    ocpd_rating: 35 A\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run", "    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none\n  - name: tap-run" } }, "ocpd_rating"),
  -- 10 AWG copper takes 30 A at most: 240.4(D). Published example: 7 600 W at 240 V on 10 AWG fails.
  fail("nec/circuit-protection", "quill", "circuit:inverter-run", { { "    conductor_size: 8 AWG", "    conductor_size: 10 AWG" } }, "largest that protects the conductors", 40, 30, -1 / 3),
  -- 7 700 W / 240 V is 32.08 A and would need 40.1 A; the marked 32 A needs 40 A, and stands.
  pass("nec/circuit-protection", "quill", "circuit:inverter-run", "125 % of the current", 40, 40, 0),

  pass("nec/conductors-shown", "quill", nil, "A circuit carries string string-2"),
  fail("nec/conductors-shown", "quill", nil, { { "    carries: [string-2]", "    carries: [string-1]" } }, "A circuit carries string string-2"),
  open("nec/conductors-shown", "quill", nil, { { "    carries: [string-2]\n", "" } }, "carries"),
  pass("nec/breaker-on-circuit", "quill", "circuit:inverter-run", "Rating on the circuit", 40, 40),
  fail("nec/breaker-on-circuit", "quill", "circuit:inverter-run", { { "duty: source, rating: 40 A", "duty: source, rating: 50 A" } }, "Rating on the circuit", 40, 50),
  open("nec/breaker-on-circuit", "quill", "circuit:inverter-run", { { "duty: source, rating: 40 A, ", "duty: source, " } }, "rating"),

  pass("nec/dc-device-place", "tern", "circuit:home-1", "Length", 8, 10, 0.2, {
    change = { { "    length: 40 ft", "    length: 8 ft", 2 }, { "    ocpd: none\n    ocpd_ends: 0\n    terminal_temperature: 75 °C\n    listings: none", "    ocpd: fuse\n    ocpd_rating: 25 A\n    ocpd_dc_rated: yes\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none", 2 } },
  }),
  fail("nec/dc-device-place", "tern", "circuit:home-1", { { "    ocpd: none\n    ocpd_ends: 0\n    terminal_temperature: 75 °C\n    listings: none", "    ocpd: fuse\n    ocpd_rating: 25 A\n    ocpd_dc_rated: yes\n    ocpd_ends: 1\n    terminal_temperature: 75 °C\n    listings: none", 2 } },
    "Ends that are protected", 1, 2, -0.5),
  open("nec/dc-device-place", "tern", "circuit:home-1", { { "    ocpd: none\n    ocpd_ends: 0\n    terminal_temperature: 75 °C\n    listings: none", "    ocpd: fuse\n    ocpd_rating: 25 A\n    ocpd_dc_rated: yes\n    terminal_temperature: 75 °C\n    listings: none", 2 } },
    "ocpd_ends"),

  pass("nec/terminal-temperature", "tern", "circuit:inverter-run", "against the inverter's terminals", 75, 75),
  fail("nec/terminal-temperature", "tern", "circuit:inverter-run", nil, "against the inverter's terminals", 75, 60, nil, with(S6000, "terminal_temperature: 75 °C", "terminal_temperature: 60 °C")),
  open("nec/terminal-temperature", "tern", "circuit:inverter-run", nil, "terminal_temperature", with(S6000, "terminal_temperature: 75 °C", "terminal_temperature:")),

  pass("nec/rooftop-height", "tern", "circuit:home-1", "Height above the roof", 0.8125, 0.75, 0.0625 / 0.75),
  fail("nec/rooftop-height", "tern", "circuit:home-1", nil, "Height above the roof", 0.8125, 0.875, -0.0625 / 0.875, { book = "nec@2020", level = "warning" }),
  open("nec/rooftop-height", "tern", "circuit:home-1", { { "    height_above_roof: 13/16 in\n", "", 2 } }, "height_above_roof"),

  -- Four 10 AWG and one 10 AWG ground in 3/4 in EMT: 5 x 0.0211 in² of 0.533 in².
  pass("nec/raceway-fill", "tern", "circuit:home-1", "filled", 0.19794, 0.4, 0.50516),
  fail("nec/raceway-fill", "tern", "circuit:tap-run", { { "    raceway_size: 1 in", "    raceway_size: 1/2 in" } }, "filled", (3 * 0.0507 + 0.0366) / 0.304, 0.4, nil),
  open("nec/raceway-fill", "tern", "circuit:tap-run", { { "    raceway_size: 1 in", "    raceway_size:" } }, "raceway_size"),

  pass("nec/circuit-drop", "tern", "circuit:home-1", "is lost", 2 * 40 * 1.24 / 1000 * 13.03 / 300, 0.02),
  fail("nec/circuit-drop", "tern", "circuit:home-1", { { "    length: 40 ft", "    length: 400 ft", 2 } }, "is lost", 2 * 400 * 1.24 / 1000 * 13.03 / 300, 0.02, nil, { level = "warning" }),
  open("nec/circuit-drop", "tern", "circuit:home-1", { { "    length: 40 ft\n", "", 2 } }, "length"),

  pass("nec/array-cable", "tern", "circuit:array-1", "PV wire, USE-2 or RHW-2"),
  fail("nec/array-cable", "tern", "circuit:array-1", { { "    insulation: PV wire", "    insulation: THWN-2", 2 } }, "PV wire, USE-2 or RHW-2"),
  fail("nec/array-cable", "tern", "circuit:array-1", { { "    insulation: PV wire", "    insulation: RHW-2", 2 } }, "PV wire or USE-2", nil, nil, nil, { book = "nec@2017" }),
  pass("nec/array-cable", "tern", "circuit:array-1", "PV wire, USE-2 or RHW-2", nil, nil, nil, { book = "nec@2020", change = { { "    insulation: PV wire", "    insulation: RHW-2\n    sunlight_resistant: yes", 2 } } }),
  open("nec/array-cable", "tern", "circuit:array-1", { { "    listings: [UL 4703]\n", "", 2 } }, "listings"),
  pass("nec/insulation-temperature", "quill", "circuit:roof-run-1", "of its type", 90, 90),
  fail("nec/insulation-temperature", "quill", "circuit:roof-run-1", { { "    insulation: THWN-2", "    insulation: THWN", 3 } }, "of its type", 90, 75),
  open("nec/insulation-temperature", "quill", "circuit:roof-run-1", { { "    insulation_temperature: 90 °C\n", "", 3 } }, "insulation_temperature"),
  pass("nec/ac-wiring", "moss", "circuit:trunk-1", "in a cable"),
  fail("nec/ac-wiring", "moss", "circuit:trunk-1", { { "    insulation: trunk cable", "    insulation: THWN-2", 2 } }, "in a cable"),
  open("nec/ac-wiring", "moss", "circuit:trunk-1", { { "    insulation: trunk cable\n", "", 2 } }, "insulation"),
  pass("nec/wet-insulation", "quill", "circuit:roof-run-1", "For wet places"),
  fail("nec/wet-insulation", "quill", "circuit:roof-run-1", { { "    insulation: THWN-2", "    insulation: THHN", 3 } }, "For wet places"),
  open("nec/wet-insulation", "quill", "circuit:roof-run-1", { { "    insulation: THWN-2\n", "", 3 } }, "insulation"),

  pass("nec/cable-support", "tern", "circuit:array-1", "between supports", 24, 24, 0),
  fail("nec/cable-support", "tern", "circuit:array-1", { { "    support_spacing: 24 in", "    support_spacing: 30 in", 2 } }, "between supports", 30, 24, -0.25),
  pass("nec/cable-support", "tern", "circuit:array-1", "between supports", 30, 54, 24 / 54, { book = "nec@2017", change = { { "    support_spacing: 24 in", "    support_spacing: 30 in", 2 } } }),
  open("nec/cable-support", "tern", "circuit:array-1", { { "    support_spacing: 24 in\n", "", 2 } }, "support_spacing"),
  pass("nec/raceway-support", "tern", "circuit:home-1", "between supports", 8, 10, 0.2),
  fail("nec/raceway-support", "tern", "circuit:home-1", { { "    support_spacing: 96 in", "    support_spacing: 144 in", 2 } }, "between supports", 12, 10, -0.2),
  open("nec/raceway-support", "tern", "circuit:home-1", { { "    support_spacing: 96 in\n", "", 2 } }, "support_spacing"),

  pass("nec/raceway-shared", "tern", "circuit:home-2", "All conductors", 5, 5),
  fail("nec/raceway-shared", "tern", "circuit:home-2", { { "raceway_size: 3/4 in\n    raceway_of: home-1", "raceway_size: 1 in\n    raceway_of: home-1" } }, "has the size told"),
  open("nec/raceway-shared", "tern", "circuit:home-2", { { "raceway_size: 3/4 in\n    raceway_of: home-1", "raceway_of: home-1" } }, "raceway_size"),
  pass("nec/dc-indoors", "tern", "circuit:home-1", "In a metal raceway"),
  fail("nec/dc-indoors", "tern", "circuit:home-1", { { "    wiring_method: EMT\n    raceway_size: 3/4 in\n    length: 40 ft", "    wiring_method: PVC 40\n    raceway_size: 3/4 in\n    length: 40 ft" } }, "In a metal raceway"),
  open("nec/dc-indoors", "tern", "circuit:home-1", { { "    inside_building: yes\n", "", 2 } }, "inside_building"),
  pass("nec/dc-ac-apart", "tern", "circuit:home-1", "another raceway"),
  fail("nec/dc-ac-apart", "quill", "circuit:roof-run-1", { { "    dc_and_ac_separated: yes", "    dc_and_ac_separated: no", 3 } }, "another raceway"),
  open("nec/dc-ac-apart", "quill", "circuit:roof-run-1", { { "    dc_and_ac_separated: yes\n", "", 3 } }, "dc_and_ac_separated"),

  pass("nec/arc-fault", "tern", I1, "Arc-fault protection"),
  fail("nec/arc-fault", "tern", I1, nil, "Arc-fault protection", nil, nil, nil, with(S6000, "arc_fault_protection: yes", "arc_fault_protection: no")),
  open("nec/arc-fault", "tern", I1, nil, "arc_fault_protection", with(S6000, "arc_fault_protection: yes", "arc_fault_protection:")),
  pass("nec/ground-fault", "tern", nil, "A ground fault is shown"),
  fail("nec/ground-fault", "tern", nil, { { "ground_fault_indication: yes", "ground_fault_indication: no" } }, "A ground fault is shown"),
  pass("nec/ground-fault", "tern", nil, "Ground-fault protection", nil, nil, nil, { book = "nec@2017", change = { { "ground_fault_indication: yes", "ground_fault_indication: no" } } }),
  open("nec/ground-fault", "tern", nil, { { "  ground_fault_protection: yes\n", "" } }, "ground_fault_protection"),

  -- A 40 A device: 10 AWG copper.
  pass("nec/circuit-ground", "quill", "circuit:inverter-run", "10 AWG is needed", 10.38, 10.38, 0),
  fail("nec/circuit-ground", "tern", "circuit:inverter-run", { { "    neutral_size: 8 AWG\n    egc_size: 10 AWG", "    neutral_size: 8 AWG\n    egc_size: 12 AWG" } }, "10 AWG is needed", 6.53, 10.38, -3.85 / 10.38),
  open("nec/circuit-ground", "tern", "circuit:inverter-run", { { "    neutral_size: 8 AWG\n    egc_size: 10 AWG\n", "    neutral_size: 8 AWG\n" } }, "egc_size"),
  pass("nec/array-ground", "quill", nil, "14 AWG is the least", 26.24, 4.11),
  fail("nec/array-ground", "quill", nil, { { "array_egc_size: 6 AWG", "array_egc_size: 8 AWG" }, { "array_egc_protected: yes", "array_egc_protected: no" } }, "6 AWG is the least", 16.51, 26.24, -9.73 / 26.24),
  open("nec/array-ground", "quill", nil, { { "  array_egc_size: 6 AWG\n", "" } }, "array_egc_size"),
  -- 2/0 copper takes 4 AWG.
  pass("nec/electrode", "quill", nil, "4 AWG is needed", 41.74, 41.74, 0),
  fail("nec/electrode", "quill", nil, { { "gec_size: 4 AWG", "gec_size: 6 AWG" } }, "4 AWG is needed", 26.24, 41.74, -15.5 / 41.74),
  open("nec/electrode", "quill", nil, { { "  gec_size: 4 AWG\n", "" } }, "gec_size"),
  pass("nec/array-bonding", "quill", nil, "listed with this racking"),
  fail("nec/array-bonding", "quill", nil, { { "pair_listed: yes", "pair_listed: no" } }, "listed with this racking"),
  open("nec/array-bonding", "quill", nil, { { "  pair_listed: yes\n", "" } }, "pair_listed"),
  pass("nec/bonding-over-250", "quill", nil, "bonded by fittings", nil, nil, nil, { book = "nec@2017" }),
  fail("nec/bonding-over-250", "quill", nil, { { "bonded_over_250_volts: yes", "bonded_over_250_volts: no" } }, "bonded by fittings", nil, nil, nil, { book = "nec@2017" }),
  fail("nec/bonding-over-250", "quill", nil, { { "bonded_over_250_volts: yes", "bonded_over_250_volts: no" }, { "solidly_grounded: no", "solidly_grounded: yes" } }, "bonded by fittings"),
  open("nec/bonding-over-250", "quill", nil, { { "  bonded_over_250_volts: yes\n", "" } }, "bonded_over_250_volts", { book = "nec@2017" }),

  pass("nec/module-figures", "tern", "module_model:Quillon Q405", "Short-circuit current against", 13.8, 13.03, 0.77 / 13.03),
  fail("nec/module-figures", "tern", "module_model:Quillon Q405", nil, "Short-circuit current against", 1.38, 13.03, 1.38 / 13.03 - 1, with(Q405, "short_circuit_current: 13.8 A", "short_circuit_current: 1.38 A")),
  open("nec/module-figures", "tern", "module_model:Quillon Q405", nil, "power_current", with(Q405, "power_current: 13.03 A", "power_current:")),
  pass("nec/module-listing", "tern", "module_model:Quillon Q405", "UL 61730"),
  fail("nec/module-listing", "tern", "module_model:Quillon Q405", nil, "UL 61730", nil, nil, nil, with(Q405, "listings: [UL 61730, UL 6703]", "listings: none")),
  open("nec/module-listing", "tern", "module_model:Quillon Q405", nil, "listings", with(Q405, "listings: [UL 61730, UL 6703]", "listings:")),
  pass("nec/inverter-listing", "tern", I1, "UL 1741"),
  fail("nec/inverter-listing", "tern", I1, nil, "UL 1741", nil, nil, nil, with(S6000, "listings: [UL 1741, UL 1741 SB, UL 1699B, UL 6703]", "listings: [UL 1699B]")),
  open("nec/inverter-listing", "tern", I1, nil, "listings", with(S6000, "listings: [UL 1741, UL 1741 SB, UL 1699B, UL 6703]", "listings:")),
  pass("nec/racking-listing", "tern", nil, "UL 2703"),
  fail("nec/racking-listing", "tern", nil, nil, "UL 2703", nil, nil, nil, { level = "warning", model = { "racking", "Hewn R10", { { "listings: [UL 2703]", "listings: none" } } } }),
  open("nec/racking-listing", "tern", nil, nil, "listings", with({ "racking", "Hewn R10" }, "listings: [UL 2703]", "listings:")),
  pass("nec/dc-ac-ratio", "tern", I1, "DC power over AC power", 1.2825, 1.4, 0.1175 / 1.4),
  fail("nec/dc-ac-ratio", "tern", I1, nil, "DC power over AC power", 7695 / 5000, 1.4, (1.4 - 1.539) / 1.4, { level = "warning", model = { "inverters", "Fenwick S6000", { { "rated_power: 6000 W", "rated_power: 5000 W" } } } }),
  open("nec/dc-ac-ratio", "tern", I1, nil, "rated_power", with(S6000, "rated_power: 6000 W", "rated_power:")),

  -- A combiner of both strings: 2 x 17.25 A.
  pass("nec/combiner", "tern", "combiner:box", "Rated output", 40, 34.5, 5.5 / 34.5, { change = {
    { "combiners: none", "combiners:\n  - {name: box, fuse: 25 A, rating: 40 A, voltage_rating: 600 V, listings: [UL 1741], location: roof}" }, { "fused: no", "combiner: box, fused: yes, fuse: 25 A", 2 } } }),
  fail("nec/combiner", "tern", "combiner:box", {
    { "combiners: none", "combiners:\n  - {name: box, fuse: 20 A, rating: 40 A, voltage_rating: 600 V, listings: [UL 1741], location: roof}" }, { "fused: no", "combiner: box, fused: yes, fuse: 25 A", 2 } },
    "Rating of each fuse against 125 %", 20, 21.5625, -1.5625 / 21.5625),
  open("nec/combiner", "tern", "combiner:box", {
    { "combiners: none", "combiners:\n  - {name: box, rating: 40 A, voltage_rating: 600 V, listings: [UL 1741], location: roof}" }, { "fused: no", "combiner: box, fused: yes, fuse: 25 A", 2 } }, "fuse"),

  -- One string behind fuses: holders that isolate will do.
  pass("nec/combiner-isolation", "tern", "combiner:box", "is in it", nil, nil, nil, { change = box("isolation: finger-safe holders") }),
  fail("nec/combiner-isolation", "tern", "combiner:box", box("isolation: none"), "is in it"),
  open("nec/combiner-isolation", "tern", "combiner:box", box("location: roof"), "isolation"),
  pass("nec/combiner-place", "tern", "combiner:box", "bathroom", nil, nil, nil, { change = box("location: roof, enclosure_type: 4X") }),
  fail("nec/combiner-place", "tern", "combiner:box", box("location: clothes closet"), "clothes closet"),
  open("nec/combiner-place", "tern", "combiner:box", box("isolation: none"), "location"),
}
