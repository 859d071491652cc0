---@type plumbrule.Rule
-- Every label that the installation needs is on the list, by kind.
return {
  title = "Labels and directories",
  cite = { ["2017"] = "690.13(B), 690.31(G), 690.53, 690.54, 690.56(C), 705.10, 705.12", ["2020"] = "690.13(B), 690.31(D), 690.53, 690.54, 690.56(C), 705.10, 705.12", ["2023"] = "690.7(D), 690.12(D), 690.13(B), 690.31(D), 705.10, 705.12" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local function has(kind)
      for _, label in ipairs(design.labels) do
        if label.kind:is(kind) then return true end
      end
      return false
    end
    shall.be("Rapid-shutdown placard", has("rapid shutdown"))
    shall.be("Marking of the PV disconnect", has("PV disconnect"))
    shall.be("Directory of power sources", has("source directory"))
    shall.be("Caution: multiple sources", has("multiple sources"))
    if design.strings:count() > 0 then
      shall.be("Largest DC voltage", has("DC maximum voltage"))
    end
    if not same(book:edition("nec"), "2023") then
      shall.be("Rated AC current and voltage at the point of interconnection", has("AC disconnect"))
    end
    if design.interconnection.side:is("load side") then
      shall.be("Source breaker marked", has("interconnection breaker"))
      shall.be("Do not relocate the source breaker", has("do not relocate"))
    end
  end,
  remedy = "Add the labels that are not on the list.",
}
