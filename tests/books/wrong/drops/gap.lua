return { title = "gap", cite = "1", about = "design", check = function() review("why") end }
