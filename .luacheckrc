std = "lua54"
max_line_length = false
exclude_files = { "build*", "node_modules", "tests/room", "tests/bad" }

-- What a rule can say, and nothing else (see core/judge).
files["rules"] = {
  std = {
    read_globals = {
      shall = { fields = { "not_exceed", "be_at_least", "be_less_than", "be_more_than", "be_equal", "be", "meet_one_of" } },
      should = { fields = { "not_exceed", "be_at_least", "be_less_than", "be_more_than", "be_equal", "be" } },
      calc = { other_fields = true },
      math = { fields = { "floor", "ceil", "abs", "sqrt", "min", "max", "log10", "exp", "pi" } },
      string = { fields = { "len", "sub", "lower", "upper", "contains", "numbers_before" } },
      table = { fields = { "insert", "remove", "concat", "sort" } },
      "review", "same", "ipairs", "select", "type", "tostring", "tonumber", "format", "abs", "sqrt", "sin", "cos",
      "tan", "smallest", "largest", "round_down", "round_up", "celsius", "fahrenheit",
      -- units
      "inch", "ft", "yd", "mi", "mm", "cm", "m", "km", "sq_in", "sq_ft", "sq_m", "lb", "kg", "s", "min", "h", "day",
      "year", "mA", "A", "kA", "mV", "V", "kV", "W", "kW", "VA", "kVA", "ohm", "Wh", "kWh", "lbf", "kip", "N", "kN",
      "plf", "psf", "psi", "ksi", "Pa", "kPa", "pcf", "mph", "deg", "delta_C", "delta_F",
    },
  },
  -- In a rule `string` is often the thing it is about.
  ignore = { "431", "211/_.*" },
}
files["tests"] = { globals = {}, ignore = { "111", "112", "113", "212/self" } }
files["tests/judge/books"] = files["rules"]
