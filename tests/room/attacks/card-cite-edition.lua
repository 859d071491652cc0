-- Tries: a citation per edition in a book that has none.
-- Expects: open rule-card
return {
  title = "Attack", cite = {["2020"] = "1", ["2023"] = "2"}, about = "design",
  check = function(thing, book, design)
    shall.be("Good", true)
  end,
}
