---@type plumbrule.Rule
-- Above 30 A of DC an equipment disconnect is asked for, one that breaks its load; up to there a device that only
-- isolates will do, marked not to be opened under load. The threshold: 2017 and 2020 published, its letters of 2017
-- and 2023 and the marking from memory. The disconnect of the PV system itself has a rule of its own.
return {
  title = "Disconnects that break their load",
  cite = { ["2017"] = "690.13(F), 690.15(A), (C)", ["2020"] = "690.13(E), 690.15(B), (D)", ["2023"] = "690.13(E), 690.15(B), (D)" },
  about = "disconnect",
  applies = function(disconnect) return disconnect.role:is("service", "emergency", "AC", "DC", "utility", "equipment") end,
  check = function(disconnect, book)
    local of, strings = nil, nil
    if disconnect.role:is("DC", "equipment") then of = disconnect.of end
    if of and same(of:kind_of(), "combiner") or of and same(of:kind_of(), "inverter") and disconnect.role:is("DC") then
      strings = of.strings
    elseif of and same(of:kind_of(), "string") then
      strings = { of }
    end
    if not strings or disconnect.load_break then
      shall.be("It breaks its load", disconnect.load_break)
      return
    end
    local amperes, most, count = 0 * A, 0 * A, 0
    for _, string in ipairs(strings) do
      local current = string:source_current()
      amperes, most, count = amperes + current, largest(most, current), count + 1
    end
    -- An inverter's strings may have poles of their own; those of a combiner leave it as one circuit.
    if count > 1 and same(of:kind_of(), "inverter") and amperes > book.isolator_current and most <= book.isolator_current then
      if disconnect.poles >= 2 * count then
        amperes = most
      else
        review(format("All strings together carry %s, more than it may isolate (%s): the inspector looks at its diagram which of them share a pole", amperes, book.isolator_current))
        return
      end
    end
    shall.not_exceed("DC current that a device may isolate which does not break its load", amperes, book.isolator_current)
    review("It only isolates: the inspector looks that it is marked not to be opened under load, and what breaks the load before it is opened")
  end,
  remedy = "Use a switch or breaker that is rated to break its load.",
}
