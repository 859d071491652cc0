-- Every label by edition: there, worded, sized, colored and placed.
local e = require("electrical")
local pass, fail, open = e.pass, e.fail, e.open

local placard = "text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN, letter_height: 3/8 in, color: black on yellow"
local switch = "text: RAPID SHUTDOWN SWITCH FOR SOLAR PV SYSTEM, letter_height: 3/8 in, color: white on red, reflective: yes, permanent: yes, distance: 1 ft"
local raceway = "text: SOLAR PV DC CIRCUIT, letter_height: 3/8 in, color: white on red, reflective: yes, permanent: yes, spacing: 10 ft"

-- A label whose text or place is changed, and one that is not on the list at all.
-- Storage on the premises, named in the directory and marked at its disconnect.
local storage = {
  { "other_sources: none", "other_sources:\n  - {name: cell, kind: storage, output_current: 24 A, parallel: no, interlocked: yes, listings: [UL 9540]}" },
  { "SOURCES OF POWER AND THEIR DISCONNECTS", "PV AND STORAGE, THEIR DISCONNECTS" },
  { "kind: utility disconnect, place: AC disconnect, text: PV UTILITY DISCONNECT", 'kind: storage, place: storage disconnect, text: "STORAGE DISCONNECT, 240 V"' },
}

return {
  pass("nec/label-rapid-shutdown", "quill", nil, "Height of its title", 0.375, 0.375, 0),
  fail("nec/label-rapid-shutdown", "quill", nil, { { placard, "text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN, letter_height: 1/4 in, color: black on yellow" } }, "Height of its title", 0.25, 0.375, -1 / 3),
  fail("nec/label-rapid-shutdown", "quill", nil, { { placard, "text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN, letter_height: 3/8 in, color: white on red" } }, "black on yellow", nil, nil, nil, { book = "nec@2020" }),
  pass("nec/label-rapid-shutdown", "quill", nil, "Height of its title", 0.375, 0.375, 0, { change = { { placard, "text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN, letter_height: 3/8 in, color: white on red" } } }),
  fail("nec/label-rapid-shutdown", "quill", nil, { { "kind: rapid shutdown, place", "kind: storage, place" } }, "Labels of this kind", 0, 0),
  open("nec/label-rapid-shutdown", "quill", nil, { { placard, "text: SOLAR PV SYSTEM EQUIPPED WITH RAPID SHUTDOWN, color: black on yellow" } }, "letter_height"),
  pass("nec/label-shutdown-switch", "quill", nil, "Distance from the switch", 1, 3, 2 / 3),
  fail("nec/label-shutdown-switch", "quill", nil, { { switch, (switch:gsub("1 ft", "6 ft")) } }, "Distance from the switch", 6, 3, -1),
  fail("nec/label-shutdown-switch", "quill", nil, { { switch, (switch:gsub("white on red", "black on white")) } }, "White on red", nil, nil, nil, { book = "nec@2020" }),
  open("nec/label-shutdown-switch", "quill", nil, { { switch, (switch:gsub(", distance: 1 ft", "")) } }, "distance"),
  pass("nec/label-pv-disconnect", "quill", nil, "PV SYSTEM DISCONNECT"),
  fail("nec/label-pv-disconnect", "quill", nil, { { "text: PV SYSTEM DISCONNECT", "text: SOLAR" } }, "PV SYSTEM DISCONNECT"),
  open("nec/label-pv-disconnect", "quill", nil, { { "text: PV SYSTEM DISCONNECT, ", "" } }, "text"),
  pass("nec/label-dc-voltage", "quill", nil, "It gives volts"),
  fail("nec/label-dc-voltage", "quill", nil, nil, "amperes", nil, nil, nil, { book = "nec@2017" }),
  pass("nec/label-dc-voltage", "quill", nil, "amperes", nil, nil, nil, { book = "nec@2017", change = { { "text: MAXIMUM DC VOLTAGE 480 V", 'text: "MAXIMUM DC VOLTAGE 480 V, 30 A"' } } }),
  open("nec/label-dc-voltage", "quill", nil, { { "text: MAXIMUM DC VOLTAGE 480 V, ", "" } }, "text"),
  pass("nec/label-ac-output", "quill", nil, "It gives amperes", nil, nil, nil, { book = "nec@2020" }),
  fail("nec/label-ac-output", "quill", nil, { { "RATED AC OUTPUT 32 A, NOMINAL AC VOLTAGE 240 V", "NOMINAL AC VOLTAGE 240 V" } }, "It gives amperes", nil, nil, nil, { book = "nec@2017" }),
  open("nec/label-ac-output", "quill", nil, { { 'text: "RATED AC OUTPUT 32 A, NOMINAL AC VOLTAGE 240 V", ', "" } }, "text", { book = "nec@2020" }),
  { rule = "nec/label-ac-output", kind = "notApplicable", design = "quill", book = "nec@2023" }, -- deleted
  pass("nec/label-dc-raceway", "quill", nil, "Distance from one to the next", 10, 10, 0),
  fail("nec/label-dc-raceway", "quill", nil, { { raceway, (raceway:gsub("10 ft", "12 ft")) } }, "Distance from one to the next", 12, 10, -0.2),
  fail("nec/label-dc-raceway", "quill", nil, nil, "the words that the edition knows", nil, nil, nil, { book = "nec@2017" }),
  pass("nec/label-dc-raceway", "quill", nil, "the words that the edition knows", nil, nil, nil, { book = "nec@2017", change = { { "text: SOLAR PV DC CIRCUIT", "text: PHOTOVOLTAIC POWER SOURCE" } } }),
  open("nec/label-dc-raceway", "quill", nil, { { raceway, (raceway:gsub(", spacing: 10 ft", "")) } }, "spacing"),
  { rule = "nec/label-dc-raceway", kind = "notApplicable", design = "moss" },
  pass("nec/label-source-directory", "quill", nil, "telephone number"),
  fail("nec/label-source-directory", "quill", nil, { { ", TEL 555-0142", "" } }, "telephone number"),
  pass("nec/label-source-directory", "quill", nil, "Directories at the service", nil, nil, nil, { book = "nec@2020", change = { { ", TEL 555-0142", "" } } }),
  open("nec/label-source-directory", "quill", nil, { { "kind: source directory, place: service equipment, ", "kind: source directory, " } }, "place"),
  pass("nec/label-multiple-sources", "quill", nil, "MULTIPLE SOURCES"),
  fail("nec/label-multiple-sources", "quill", nil, { { "CAUTION: MULTIPLE SOURCES OF POWER", "CAUTION" } }, "MULTIPLE SOURCES"),
  open("nec/label-multiple-sources", "quill", nil, { { ', text: "CAUTION: MULTIPLE SOURCES OF POWER"', "" } }, "text"),
  pass("nec/label-source-breaker", "quill", nil, "At the panel"),
  fail("nec/label-source-breaker", "quill", nil, { { "kind: interconnection breaker, place: main panel", "kind: interconnection breaker, place: roof" } }, "At the panel"),
  open("nec/label-source-breaker", "quill", nil, { { "kind: interconnection breaker, place: main panel, ", "kind: interconnection breaker, " } }, "place"),
  { rule = "nec/label-source-breaker", kind = "notApplicable", design = "tern" },
  pass("nec/label-do-not-relocate", "moss", nil, "forbids to move"),
  fail("nec/label-do-not-relocate", "moss", nil, { { "DO NOT RELOCATE THIS OVERCURRENT DEVICE", "POWER SOURCE" } }, "forbids to move"),
  open("nec/label-do-not-relocate", "moss", nil, { { ', text: "WARNING: POWER SOURCE OUTPUT CONNECTION. DO NOT RELOCATE THIS OVERCURRENT DEVICE"', "" } }, "text"),
  { rule = "nec/label-do-not-relocate", kind = "notApplicable", design = "quill" }, -- 190 A on 225 A needs no far end
  pass("nec/label-sum-of-breakers", "moss", nil, "may not exceed"),
  fail("nec/label-sum-of-breakers", "moss", nil, { { "RATINGS OF ALL BREAKERS BUT THE MAIN SHALL NOT EXCEED 60 A", "PV PANEL" } }, "may not exceed"),
  open("nec/label-sum-of-breakers", "moss", nil, { { ', text: "RATINGS OF ALL BREAKERS BUT THE MAIN SHALL NOT EXCEED 60 A"', "" } }, "text"),
  pass("nec/label-service-disconnect", "quill", nil, "It says SERVICE DISCONNECT"),
  fail("nec/label-service-disconnect", "quill", nil, { { "text: SERVICE DISCONNECT,", "text: SWITCH," } }, "It says SERVICE DISCONNECT"),
  open("nec/label-service-disconnect", "quill", nil, { { "text: SERVICE DISCONNECT, ", "" } }, "text"),
  pass("nec/label-emergency-disconnect", "quill", nil, "Height of its letters", 0.5, 0.5, 0),
  fail("nec/label-emergency-disconnect", "quill", nil, { { "letter_height: 1/2 in", "letter_height: 3/8 in" } }, "Height of its letters", 0.375, 0.5, -0.25),
  pass("nec/label-emergency-disconnect", "quill", nil, "EMERGENCY DISCONNECT", nil, nil, nil, { book = "nec@2020", change = { { "letter_height: 1/2 in", "letter_height: 3/8 in" } } }),
  open("nec/label-emergency-disconnect", "quill", nil, { { "letter_height: 1/2 in, ", "" } }, "letter_height"),
  pass("nec/label-permanent", "quill", "label:directory", "Permanent"),
  fail("nec/label-permanent", "quill", "label:directory", { { 'TEL 555-0142", letter_height: 3/8 in, color: any, permanent: yes', 'TEL 555-0142", letter_height: 3/8 in, color: any, permanent: no' } }, "Permanent"),
  open("nec/label-permanent", "quill", "label:directory", { { 'TEL 555-0142", letter_height: 3/8 in, color: any, permanent: yes', 'TEL 555-0142", letter_height: 3/8 in, color: any' } }, "permanent"),
  pass("nec/label-storage", "quill", nil, "gives volts", nil, nil, nil, { change = storage }),
  fail("nec/label-storage", "quill", nil, { storage[1], storage[2] }, "Labels of this kind", 0, 0),
  open("nec/label-storage", "quill", nil, { storage[1], storage[2], { 'kind: utility disconnect, place: AC disconnect, text: PV UTILITY DISCONNECT', "kind: storage, place: storage disconnect" } }, "text"),
}
