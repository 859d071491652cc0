-- Tries: a sentence that is no UTF-8.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be("\xff\xfe", true) -- here
  end,
}
