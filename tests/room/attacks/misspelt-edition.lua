-- Tries: the edition of a book that is not in force.
-- Expects: open - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("Edition", book:edition("nec"), "2020")
  end,
}
