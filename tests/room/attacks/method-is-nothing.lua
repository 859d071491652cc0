-- Tries: is() without a word.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    design.site.exposure:is() -- here
  end,
}
