---@type plumbrule.Rule
-- 690.4(B) from memory.
return {
  title = "Ratings of a combiner",
  cite = { ["2017"] = "690.4(B), 690.9(B), 110.3(B)", ["2020"] = "690.4(B), 690.9(B), 110.3(B)", ["2023"] = "690.4(B), 690.9(B), 110.3(B)" },
  about = "combiner",
  check = function(combiner, book, design)
    shall.be("Listed to UL 1741", combiner.listings:has("UL 1741"))
    local amperes = 0 * A
    for _, string in ipairs(combiner.strings) do
      amperes = amperes + string:source_current()
      shall.be_at_least("Rated voltage against that of a string", combiner.voltage_rating, string:maximum_voltage(design.site.design_low_temperature))
      -- The fuse is told twice, or stands twice.
      if string.fused and not same(string.fuse, combiner.fuse) then
        review(format("String %s is told to have a fuse of %s, and the combiner one of %s for each string: the designer tells which of the two is there, or that both are", string:called(), string.fuse, combiner.fuse))
      end
      shall.be_at_least(format("Rating of each fuse against %s %% of the string's current", 100 * book.continuous_factor), combiner.fuse, book.continuous_factor * string:source_current())
      for _, module in ipairs(string.modules) do
        shall.not_exceed("Rating of each fuse against the module's largest", combiner.fuse, module.model.maximum_series_fuse)
      end
    end
    shall.be_at_least("Rated output against the current of its strings", combiner.rating, amperes)
  end,
  remedy = "Use a combiner that is rated for its strings.",
}
