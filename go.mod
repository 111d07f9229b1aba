module washeve

go 1.26
