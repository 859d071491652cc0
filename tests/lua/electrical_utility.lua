-- What the invented utility asks beside the code.
local e = require("electrical")
local pass, fail, open = e.pass, e.fail, e.open

local function row(make, rule, design, about, ...)
  local one = make("sallow-point/" .. rule, design, about, ...)
  one.books = { "nec@2023", "sallow-point" }
  return one
end
local micro = { model = { "inverters", "Fenwick M350", { { "rated_power: 349 W", "rated_power: 1500 W" } } } }

return {
  row(pass, "lockable-disconnect", "quill", nil, "Its distance from the meter", 4, 10, 0.6),
  row(fail, "lockable-disconnect", "quill", nil, { { "distance_to_meter: 4 ft", "distance_to_meter: 14 ft" } }, "Its distance from the meter", 14, 10, -0.4),
  row(fail, "lockable-disconnect", "quill", nil, { { "role: utility", "role: AC" } }, "Disconnects for the utility", 0, 0),
  row(open, "lockable-disconnect", "quill", nil, { { ", distance_to_meter: 4 ft", "" } }, "distance_to_meter"),
  row(pass, "utility-disconnect-label", "quill", nil, "UTILITY DISCONNECT"),
  row(fail, "utility-disconnect-label", "quill", nil, { { "text: PV UTILITY DISCONNECT", "text: SWITCH" } }, "UTILITY DISCONNECT"),
  row(open, "utility-disconnect-label", "quill", nil, { { "text: PV UTILITY DISCONNECT, ", "" } }, "text"),
  -- 19 x 349 W
  row(pass, "generation-cap", "moss", nil, "AC power of all PV", 6.631, 25, 18.369 / 25),
  row(fail, "generation-cap", "moss", nil, nil, "AC power of all PV", 28.5, 25, -0.14, micro),
  row(fail, "generation-cap", "moss", nil, nil, "simple application", 11.4, 10, -0.14, { level = "warning", model = { "inverters", "Fenwick M350", { { "rated_power: 349 W", "rated_power: 600 W" } } } }),
  row(open, "generation-cap", "moss", nil, { { "other_sources: none\n", "" } }, "other_sources"),
  row(pass, "anti-islanding", "tern", nil, "UL 1741 SB"),
  row(fail, "anti-islanding", "tern", nil, nil, "UL 1741 SB", nil, nil, nil, { model = { "inverters", "Fenwick S6000", { { "UL 1741, UL 1741 SB, UL 1699B", "UL 1741, UL 1699B" } } } }),
  row(open, "anti-islanding", "tern", nil, nil, "listings", { model = { "inverters", "Fenwick S6000", { { "listings: [UL 1741, UL 1741 SB, UL 1699B, UL 6703]", "listings:" } } } }),
  row(pass, "meter-shown", "quill", nil, "Meters of the utility's", 1, 1, 0),
  row(fail, "meter-shown", "quill", nil, { { "revenue: yes", "revenue: no" } }, "Meters of the utility's", 0, 1, -1),
  row(open, "meter-shown", "quill", nil, { { "revenue: yes, ", "" } }, "revenue"),
  row(pass, "revenue-meter", "quill", "meter:revenue", "Rating of its socket", 200, 150, 1 / 3),
  row(fail, "revenue-meter", "quill", "meter:revenue", { { "meter_main: no, rating: 200 A", "meter_main: no, rating: 125 A" } }, "Rating of its socket", 125, 150, -25 / 150),
  row(open, "revenue-meter", "quill", "meter:revenue", { { "bidirectional: yes, ", "" } }, "bidirectional"),
  row(pass, "agreement", "quill", nil, "The application is with the utility"),
  row(fail, "agreement", "quill", nil, { { "kind: interconnection application, state: submitted", "kind: interconnection application, state: ready" } }, "The application is with the utility"),
  row(fail, "agreement", "quill", nil, { { "papers:\n", "papers:\n  - {name: permission, kind: permission to operate, state: approved}\n" } }, "signed before operation"),
  row(open, "agreement", "quill", nil, { { "kind: interconnection application, state: submitted, ", "kind: interconnection application, " } }, "state"),
}
