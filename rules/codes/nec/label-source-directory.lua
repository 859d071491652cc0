---@type plumbrule.Rule
-- 2017 from memory; telephone numbers from 2023, of those who look after the system from elsewhere.
return {
  title = "Label: directory of sources",
  cite = { ["2017"] = "705.10, 690.56(B)", ["2020"] = "705.10", ["2023"] = "705.10" },
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("source directory") then
        labels = labels + 1
        shall.be("At the service", label.place:is("service equipment", "meter", "main panel"))
        if same(book:edition("nec"), "2023") then
          shall.be("It gives a telephone number for emergencies (TEL …)", string.contains(string.upper(label.text), "TEL"))
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Put a directory at the service that tells where each source is disconnected; from 2023 with a telephone number.",
}
