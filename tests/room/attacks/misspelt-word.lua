-- Tries: a word the fact cannot have.
-- Expects: open rule-error says it can be: 
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = design.site.exposure:is("Z") -- here
  end,
}
