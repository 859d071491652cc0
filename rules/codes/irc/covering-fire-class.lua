---@type plumbrule.Rule
return {
  title = "Fire class of the covering",
  cite = "R902.1",
  about = "roof_plane",
  applies = function(plane, book) return plane.modules:count() > 0 and not book.roof_fire_class:is("unrated") end,
  check = function(plane, book)
    local asked, class = book.roof_fire_class, plane.covering_fire_class
    if asked:is("A") then
      shall.be("The covering is of class A", class:is("A"))
    elseif asked:is("B") then
      shall.be("The covering is of class B or better", class:is("A", "B"))
    else
      shall.be("The covering is of class C or better", class:is("A", "B", "C"))
    end
  end,
  remedy = "Renew the covering with one of the class that the town asks for, before the array goes on.",
}
