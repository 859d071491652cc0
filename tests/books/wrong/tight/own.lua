return { title = "own", cite = "1", about = "design", check = function() review("why") end }
