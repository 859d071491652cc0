-- Tries: a stable sort of 2 000 entries within the budget.
-- Expects: pass - 0
return {
  title = "Attack", cite = "Trial", about = "design",
  check = function(thing, book, design)
    local t = {}
    for i = 1, 2000 do t[i] = {key = 10 - i % 10, at = i} end
    table.sort(t, function(a, b) return a.key < b.key end)
    local good = true
    for i = 2, 2000 do
      good = good and (t[i - 1].key < t[i].key or (same(t[i - 1].key, t[i].key) and t[i - 1].at < t[i].at))
    end
    shall.be("Sorted", good)
  end,
}
