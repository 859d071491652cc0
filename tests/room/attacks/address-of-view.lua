-- Tries: the address of a view.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    shall.be_equal("View", tostring(design) .. type(design) .. type(design.meters), "designdesignlist")
  end,
}
