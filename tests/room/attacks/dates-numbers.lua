-- Tries: a date and a number.
-- Expects: open rule-error
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local x = design.project.permit_application_date < 5 -- here
  end,
}
